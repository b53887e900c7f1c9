using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Flight.Filing;

/// <summary>Writes the flight plan of a planned leg.</summary>
public static class FlightPlanFiling
{
    private const int MostAlternates = 2;

    /// <summary>The flight plan of a leg; nothing is invented: what the books do not hold is left blank and named.</summary>
    /// <param name="plan">The leg.</param>
    /// <param name="airports">The airports, for the places of alternates without location indicator.</param>
    /// <param name="operatorName">Name of the operator; empty where not given.</param>
    public static FlightPlanMessage Of(LegPlan.Planned plan, IReadOnlyDictionary<string, Airport> airports, string operatorName)
    {
        var missing = ImmutableArray.CreateBuilder<string>();
        var equipment = plan.Type.Equipment.ToUpperInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var alternates = plan.Alternates.Take(MostAlternates).Select(alternate => alternate.Airport).ToArray();
        return new FlightPlanMessage
        {
            Identification = FlightPlanField.Identification(plan.Aircraft.Registration)
                ?? Miss($"{plan.Aircraft.Registration} is no aircraft identification of one to seven letters and figures."),
            RulesAndKind = (plan.Rules == FlightRules.Ifr ? "I" : "V") + KindOf(plan.Purpose),
            TypeOfAircraft = TypeOf(plan.Type, Miss),
            Equipment = equipment is [var first, ..] && FlightPlanField.IsEquipment(first)
                ? first
                : Miss("The Types sheet has no ICAO equipment, such as SDFGRY/LB1."),
            Departure = FlightPlanField.Departure(Indicator(plan.Leg.From), plan.Times.OffBlocks),
            Route = FiledRoute.Of(plan),
            Destination = string.Join(' ', alternates.Select(Indicator).Prepend(FlightPlanField.Destination(Indicator(plan.Leg.To), plan.Times.Air))),
            Other = OtherInformation.InOrder(OtherOf(plan, alternates, airports, operatorName), equipment.Skip(1)),
            Supplementary = $"E/{Endurance(plan) ?? Miss("The cruise flow is not known, so there is no endurance.")} {FlightPlanField.Persons(plan.Load.Pilots + plan.Load.Passengers)}",
            Missing = [.. missing, .. OtherInformation.Lacking(equipment)],
        };

        string Miss(string why)
        {
            missing.Add(why);
            return FlightPlanMessage.Blank;
        }
    }

    // Charter is non-scheduled air transport. That a leg without pay is filed as general aviation is common practice, no source.
    private static char KindOf(LegPurpose purpose) => purpose == LegPurpose.Charter ? 'N' : 'G';

    private static string TypeOf(AircraftType type, Func<string, string> miss)
    {
        var designator = FlightPlanField.IsTypeDesignator(type.Designator) ? type.Designator : FlightPlanField.NoDesignator;
        return type.MaximumTakeoff is { } weight
            ? FlightPlanField.TypeOfAircraft(1, designator, FlightPlanField.WakeOf(weight))
            : $"{designator}/{miss("Without a maximum takeoff weight there is no wake turbulence category.")}";
    }

    private static IEnumerable<string> OtherOf(LegPlan.Planned plan, string[] alternates, IReadOnlyDictionary<string, Airport> airports, string operatorName)
    {
        if (!FlightPlanField.IsLocationIndicator(plan.Leg.From)) yield return FlightPlanField.Aerodrome("DEP", plan.Leg.From, plan.From.Position);
        if (!FlightPlanField.IsLocationIndicator(plan.Leg.To)) yield return FlightPlanField.Aerodrome("DEST", plan.Leg.To, plan.To.Position);
        yield return FlightPlanField.DateOfFlight(plan.Times.OffBlocks);
        yield return "REG/" + (FlightPlanField.Identification(plan.Aircraft.Registration) ?? FlightPlanMessage.Blank);
        if (!FlightPlanField.IsTypeDesignator(plan.Type.Designator) || plan.Type.Designator == FlightPlanField.NoDesignator)
            yield return "TYP/" + FlightPlanField.Plain(plan.Type.Name);
        if (FlightPlanField.Plain(operatorName) is { Length: > 0 } name) yield return "OPR/" + name;
        if (plan.Type.ApproachCategory is { Length: 1 } category) yield return "PER/" + category;
        foreach (var alternate in alternates.Where(ident => !FlightPlanField.IsLocationIndicator(ident)))
            yield return FlightPlanField.Aerodrome("ALTN", alternate, airports.GetValueOrDefault(alternate)?.Position);
        if (plan.Leg.TakeoffAlternate is { Length: > 0 } takeoff) yield return "TALT/" + FlightPlanField.Plain(takeoff);
    }

    private static string Indicator(string ident) => FlightPlanField.IsLocationIndicator(ident) ? ident : FlightPlanField.NoDesignator;

    private static string? Endurance(LegPlan.Planned plan) =>
        plan.Profile.CruiseFlow.Value > 0 ? FlightPlanField.HoursMinutes(Duration.FromHours(plan.Fuel.Takeoff.Value / plan.Profile.CruiseFlow.Value)) : null;
}
