using System.Globalization;
using Batch.Flight.Fleet;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Makes a leg ready: resolves its references, its route and its load.</summary>
internal static class LegPreparation
{
    /// <summary>Taxi time where neither leg nor operator says one; common practice, no source.</summary>
    private static readonly Duration UsualTaxi = Duration.FromMinutes(10);

    /// <summary>Time from landing to on blocks where the operator says none; common practice, no source.</summary>
    private static readonly Duration UsualTaxiIn = Duration.FromMinutes(5);

    /// <summary>The leg made ready.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="leg">The leg.</param>
    public static SetupResult Prepare(PlanningContext context, Leg leg)
    {
        var week = context.Week;
        if (!week.Fleet.TryGetValue(leg.Aircraft, out var aircraft))
            return Missing(leg, nameof(Leg.Aircraft), $"{leg.Aircraft} is not in Aircraft.", NearWords.Nearest(leg.Aircraft, week.Fleet.Keys));
        if (!week.Types.TryGetValue(aircraft.Type, out var type))
            return Missing(leg, nameof(Leg.Aircraft), $"The type {aircraft.Type} of {aircraft.Registration} is not in Types.",
                NearWords.Nearest(aircraft.Type, week.Types.Keys));
        if (!week.Airports.TryGetValue(leg.From, out var from))
            return Missing(leg, nameof(Leg.From), $"{leg.From} is not in Airports.", NearWords.Nearest(leg.From, week.Airports.Keys));
        if (!week.Airports.TryGetValue(leg.To, out var to))
            return Missing(leg, nameof(Leg.To), $"{leg.To} is not in Airports.", NearWords.Nearest(leg.To, week.Airports.Keys));
        if (WhyNoTables(type, leg) is { } why)
            return new SetupResult.NotReady(new LegPlan.Unplanned { Leg = leg, Why = why.Text, Cells = [why.Cell], Expected = why.Expected });

        var date = leg.OffBlocks.InUtc().Date;
        return RouteReader.Resolve(context.Navigation, from, to, leg.Route, date, leg.Level) switch
        {
            RouteResult.Resolved resolved => new SetupResult.Ready(Setup(context, leg, aircraft, type, from, to, resolved.Route)),
            RouteResult.Unresolved unresolved => new SetupResult.NotReady(new LegPlan.Unplanned
            {
                Leg = leg,
                Why = unresolved.Why,
                Where = string.Create(CultureInfo.InvariantCulture, $"element {unresolved.Position} of the route, {unresolved.Element}"),
                Cells = [leg.Origin.Cell(nameof(Leg.Route))],
                Expected = string.Join(", ", unresolved.Near),
            }),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static SetupResult.NotReady Missing(Leg leg, string field, string why, ImmutableArray<string> near) =>
        new(new LegPlan.Unplanned { Leg = leg, Why = why, Cells = [leg.Origin.Cell(field)], Expected = string.Join(", ", near) });

    private static (string Text, string Cell, string Expected)? WhyNoTables(AircraftType type, Leg leg) =>
        type.Tables.Climb is null ? NoTable("Climb", type, leg)
        : type.Tables.Descent is null ? NoTable("Descent", type, leg)
        : type.Tables.Cruise.IsEmpty ? NoTable("Cruise", type, leg)
        : leg.Setting.Length > 0 && !type.Tables.Cruise.ContainsKey(leg.Setting)
            ? ($"{type.Name} has no cruise setting {leg.Setting}.", leg.Origin.Cell(nameof(Leg.Setting)), string.Join(", ", type.Tables.CruiseSettings))
        : null;

    // A table of which a cell could not be read is not used at all.
    private static (string Text, string Cell, string Expected) NoTable(string sheet, AircraftType type, Leg leg) =>
        leg.Doubts.FirstOrDefault(doubt => doubt.State == State.Fail && doubt.Cell.Contains($"/{sheet}/", StringComparison.Ordinal)) is { } lost
            ? ($"The {sheet} table of {type.Name} cannot be used: {lost.Text.TrimEnd('.')}.", lost.Cell, lost.Expected)
            : ($"The {sheet} sheet has no rows for {type.Name}.", leg.Origin.Cell(nameof(Leg.Aircraft)), "");

    private static LegSetup Setup(PlanningContext context, Leg leg, Aircraft aircraft, AircraftType type, Airport from, Airport to, FlownRoute route)
    {
        var week = context.Week;
        var assumptions = ImmutableArray.CreateBuilder<string>();
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.AddRange(route.Notes);
        assumptions.AddRange(route.Assumptions);
        if (leg.Rules is null) assumptions.Add("Rules not said: planned as IFR.");
        if (leg.Purpose is null) assumptions.Add("Purpose not said: planned as charter.");
        var taxi = TaxiFuel(leg, type, week.Operator, assumptions);
        if (leg.Taxi is null && week.Operator.TaxiOut is null) assumptions.Add("No taxi time said: 10 min taken.");

        var level = leg.Level ?? (leg.IsLevelAuto ? null : route.Segments[0].LevelFromHere);
        if (leg.Level is null && level is { } written) notes.Add($"The Level cell is empty: {ProfileTrack.Altitude(written.Value)} of the route text taken.");

        var setting = leg.Setting.Length > 0 ? leg.Setting : type.Tables.CruiseSettings[0];
        var planning = context.Rules(leg, type);
        var load = Loading.Place(new LoadRequest
        {
            Aircraft = aircraft,
            Type = type,
            Captain = week.Crew.GetValueOrDefault(leg.Captain),
            SecondPilot = week.Crew.GetValueOrDefault(leg.SecondPilot),
            HasSecondPilot = leg.SecondPilot.Length > 0,
            Passengers = [.. context.Manifest[leg.Key.Trip].Where(line => line.Legs.Contains(leg.Key.Number))],
            Cargo = [.. context.Cargo[leg.Key.Trip].Where(line => line.Legs.Contains(leg.Key.Number))],
            Weights = planning.Weights,
        });
        return new LegSetup
        {
            Leg = leg,
            Aircraft = aircraft,
            Type = type,
            From = from,
            To = to,
            Alternates = Alternates(week, leg),
            Captain = week.Crew.GetValueOrDefault(leg.Captain),
            SecondPilot = week.Crew.GetValueOrDefault(leg.SecondPilot),
            Rules = leg.Rules ?? FlightRules.Ifr,
            Purpose = leg.Purpose ?? LegPurpose.Charter,
            Planning = planning,
            Route = route,
            Backup = Backup(context, leg, from, to, notes),
            Level = level,
            Setting = setting,
            Ceiling = Lower(type.Ceiling, aircraft.Ceiling),
            OxygenFrom = aircraft.Oxygen > Duration.Zero ? null : planning.OxygenFrom,
            Taxi = taxi,
            Takeoff = leg.OffBlocks + (leg.Taxi ?? week.Operator.TaxiOut ?? UsualTaxi),
            TaxiIn = week.Operator.TaxiIn ?? UsualTaxiIn,
            Load = load,
            Assumptions = assumptions.DrainToImmutable(),
            Notes = notes.DrainToImmutable(),
        };
    }

    /// <summary>The type's taxi fuel is for the operator's usual taxi; a longer one burns more in proportion, a shorter one is not credited.</summary>
    private static Pounds TaxiFuel(Leg leg, AircraftType type, Operator company, ImmutableArray<string>.Builder assumptions)
    {
        if (type.TaxiFuel is not { } usual)
        {
            assumptions.Add($"No taxi fuel in Types for {type.Name}: taken as 0 lb.");
            return Pounds.Zero;
        }

        var usualTime = company.TaxiOut ?? UsualTaxi;
        if (leg.Taxi is not { } asked || usualTime <= Duration.Zero || asked <= usualTime) return usual;
        var longer = usual * (asked / usualTime);
        assumptions.Add(FormattableString.Invariant($"Taxi of {asked.TotalMinutes:0.#} min instead of the usual {usualTime.TotalMinutes:0.#} min: taxi fuel {longer.Value:#,0} lb in proportion, not the {usual.Value:#,0} lb of Types."));
        return longer;
    }

    private static ImmutableArray<Airport> Alternates(OperatorWeek week, Leg leg) =>
    [
        .. new[] { leg.Alternate, leg.SecondAlternate }
            .Where(ident => ident.Length > 0)
            .Select(ident => week.Airports.GetValueOrDefault(ident))
            .OfType<Airport>(),
    ];

    private static FlownRoute? Backup(PlanningContext context, Leg leg, Airport from, Airport to, ImmutableArray<string>.Builder notes)
    {
        if (leg.BackupRoute.Length == 0) return null;
        switch (RouteReader.Resolve(context.Navigation, from, to, leg.BackupRoute, leg.OffBlocks.InUtc().Date, leg.Level))
        {
            case RouteResult.Resolved resolved:
                return resolved.Route;
            case RouteResult.Unresolved unresolved:
                notes.Add($"The backup route is left out: {unresolved.Why}");
                return null;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static Feet? Lower(Feet? a, Feet? b) => a is null ? b : b is null ? a : Feet.Min(a.Value, b.Value);
}
