using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>The Legs sheet: one leg a row.</summary>
internal static class LegsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Legs", "week", "The week's legs, one a row.");

    private static readonly Column<string> Trip =
        Plan.Add(ColumnKinds.Name("Trip", nameof(LegKey.Trip), "Name of the trip.", ColumnKinds.Starred, "Trip number", "Trip no"));
    private static readonly Column<int> Number = Plan.Add(
        ColumnKinds.Whole("Leg", nameof(LegKey.Number), "Number of the leg in its trip, from 1.", 1, 9999, ColumnKinds.Starred, "Leg number", "Leg no"));
    private static readonly Column<LocalDate> Date =
        Plan.Add(ColumnKinds.Date("Date", "Date", "Date of off blocks, at the departure airport (UTC where the time is UTC).", ColumnKinds.Starred));
    private static readonly Column<WrittenTime> OffBlocks = Plan.Add(ColumnKinds.Clock("Off blocks", nameof(Leg.OffBlocks),
        "Off blocks, local to the departure airport unless marked Z.", ColumnKinds.Starred, "Off block", "Off-block time", "Departure time", "ETD", "STD"));
    private static readonly Column<string> AircraftColumn = Plan.Add(ColumnKinds.Ident("Aircraft", nameof(Leg.Aircraft), "Registration as in Aircraft.",
        ColumnKinds.Starred, "Registration", "Tail", "Tail number", "A/C", "Reg"));
    private static readonly Column<string> From =
        Plan.Add(ColumnKinds.Ident("From", nameof(Leg.From), "Ident of the departure airport.", ColumnKinds.Starred, "Departure", "Dep", "ADEP", "Origin"));
    private static readonly Column<string> To =
        Plan.Add(ColumnKinds.Ident("To", nameof(Leg.To), "Ident of the destination.", ColumnKinds.Starred, "Destination", "Dest", "ADES", "Arrival", "Arr"));
    private static readonly Column<string> Alternate =
        Plan.Add(ColumnKinds.Ident("Alternate", nameof(Leg.Alternate), "Ident of the alternate.", false, "Alternate 1", "Altn", "Altn 1"));
    private static readonly Column<string> SecondAlternate =
        Plan.Add(ColumnKinds.Ident("Second alternate", nameof(Leg.SecondAlternate), "Ident of the second alternate.", false, "Alternate 2", "Altn 2"));
    private static readonly Column<string> Route = Plan.Add(ColumnKinds.Text("Route", nameof(Leg.Route), "Route between the airports; empty for direct."));
    private static readonly Column<string> BackupRoute = Plan.Add(ColumnKinds.Text("Backup route", nameof(Leg.BackupRoute), "Another route to have ready."));
    private static readonly Column<WrittenLevel> Level = Plan.Add(ColumnKinds.Bare("Level", nameof(Leg.Level),
        "Cruise level: feet, FL160, or auto; empty for auto.", ["Cruise level", "Altitude", "FL"], Quantity.Altitude, WrittenLevel.Read));
    private static readonly Column<string> Setting =
        Plan.Add(ColumnKinds.Text("Setting", nameof(Leg.Setting), "Cruise setting as in Cruise, or auto.", false, "Cruise setting", "Power setting"));
    private static readonly Column<FlightRules> Rules = Plan.Add(ColumnKinds.Word("Rules", nameof(Leg.Rules), "IFR or VFR.",
        [("IFR", FlightRules.Ifr), ("VFR", FlightRules.Vfr), ("I", FlightRules.Ifr), ("V", FlightRules.Vfr)], false, "Flight rules", "IFR/VFR"));
    private static readonly Column<LegPurpose> Purpose = Plan.Add(ColumnKinds.Word("Purpose", nameof(Leg.Purpose), "Why it is flown.",
        [("charter", LegPurpose.Charter), ("ferry", LegPurpose.Ferry), ("training", LegPurpose.Training), ("positioning", LegPurpose.Ferry)]));
    private static readonly Column<string> Captain =
        Plan.Add(ColumnKinds.Ident("Captain", nameof(Leg.Captain), "Code of the captain.", ColumnKinds.Starred, "PIC", "Capt"));
    private static readonly Column<string> SecondPilot = Plan.Add(ColumnKinds.Ident("Second pilot", nameof(Leg.SecondPilot),
        "Code of the second pilot; empty where the captain flies alone.", false, "SIC", "Copilot", "First officer", "F/O"));
    private static readonly Column<WrittenFuelPlan> FuelPlanColumn = Plan.Add(ColumnKinds.Bare("Fuel plan", nameof(Leg.FuelPlan),
        "minimum, minimum+200, full, carry, or an amount; empty for minimum.", [], Quantity.Fuel, WrittenFuelPlan.Read));
    private static readonly Column<FuelAmount> FuelAboard = Plan.Add(ColumnKinds.Fuel("Fuel aboard", nameof(Leg.FuelAboard),
        "Fuel aboard before fuelling, on the first leg of an aircraft in the week.", false, "Fuel on board"));
    private static readonly Column<double> Taxi =
        Plan.Add(ColumnKinds.Span(Quantity.Minutes, "Taxi", nameof(Leg.Taxi), "Time from off blocks to takeoff.", false, "Taxi time", "Taxi out"));
    private static readonly Column<string> DepartureRunway =
        Plan.Add(ColumnKinds.Runway("Departure runway", nameof(Leg.DepartureRunway), "Departure runway; empty for the best into the wind."));
    private static readonly Column<string> ArrivalRunway =
        Plan.Add(ColumnKinds.Runway("Arrival runway", nameof(Leg.ArrivalRunway), "Arrival runway; empty for the best into the wind."));
    private static readonly Column<string> TakeoffAlternate = Plan.Add(ColumnKinds.Ident("Takeoff alternate", nameof(Leg.TakeoffAlternate),
        "Ident of the alternate after takeoff where the departure is below its landing minima."));
    private static readonly Column<string> FlightPlanColumn = Plan.Add(ColumnKinds.Word("Flight plan", nameof(Leg.FlightPlan),
        "How the flight is followed: a flight plan is filed, the company locates it, or none.",
        [("filed", "filed"), ("company", "company"), ("none", "none"), ("yes", "filed"), ("no", "none")]));
    private static readonly Column<Instant> ManifestSent =
        Plan.Add(ColumnKinds.Start("Manifest sent", nameof(Leg.ManifestSent), "When the passenger manifest is sent to the border authority, UTC."));
    private static readonly Column<Instant> CrewManifestSent =
        Plan.Add(ColumnKinds.Start("Crew manifest sent", nameof(Leg.CrewManifestSent), "When the crew manifest is sent to the border authority, UTC."));
    private static readonly Column<string> Remarks = Plan.Add(ColumnKinds.Text("Remarks", nameof(Leg.Remarks), "Remarks."));
    private static readonly Column<string> Override = Plan.Add(ColumnKinds.Text("Override", nameof(Leg.Override),
        "Why the leg is flown and mailed although a check fails, and who decided it; printed in mail and register."));

    /// <summary>Reads the legs in book order.</summary>
    public static List<LegDraft> Read(Shelf shelf, Reference reference)
    {
        var drafts = new List<LegDraft>();
        var trips = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in shelf.Rows(Plan))
        {
            if (HoldsLeg(row)) drafts.Add(Draft(row, reference, trips));
            else row.ComplainOfRow(State.Caution, "the row holds no date, airports, aircraft or captain, so it is taken for a total or a remark, not for a leg",
                "a leg, or nothing");
        }

        if (drafts.Count == 0) shelf.ComplainOfSheets(Plan, "no legs were found here, so nothing is planned", "one leg a row, below the headers");
        LegOrder.Look(drafts, Trip, Number, Date);
        return drafts;
    }

    private static bool HoldsLeg(Row row) => new Column[] { Date, OffBlocks, AircraftColumn, From, To, Captain }.Any(column => !row.Raw(column).IsBlank);

    private static LegDraft Draft(Row row, Reference reference, Dictionary<string, string> trips)
    {
        var trip = row.NeededText(Trip);
        if (!trips.TryAdd(trip, trip)) trip = trips[trip];
        var number = row.Needed(Number);
        var date = row.Needed(Date);
        var written = row.Needed(OffBlocks);
        var registration = row.NeededText(AircraftColumn);
        var from = row.NeededText(From);
        var to = row.NeededText(To);
        var captain = row.NeededText(Captain);
        var secondPilot = row.Text(SecondPilot);
        var key = trip.Length > 0
            ? new LegKey(trip, number) { Row = number > 0 ? 0 : row.Place.Row }
            : new LegKey("row " + row.Place.Row.ToString(CultureInfo.InvariantCulture), number);
        var shell = new BrokenLeg
        {
            Key = key,
            Aircraft = Written(row, AircraftColumn),
            From = Written(row, From),
            To = Written(row, To),
            Date = date != default ? date : null,
            Captain = Written(row, Captain),
            SecondPilot = Written(row, SecondPilot),
            Problems = [],
            Origin = row.Origin,
        };

        var aircraft = Found(reference.Fleet, row, AircraftColumn, registration);
        var departure = Found(reference.Airports, row, From, from);
        var destination = Found(reference.Airports, row, To, to);
        if (aircraft is null || departure is null || destination is null) row.Lose();
        var leg = Rest(row, reference, aircraft, departure, destination);
        CrewLinks.Resolve(reference.Crew, row, Captain, captain);
        CrewLinks.Resolve(reference.Crew, row, SecondPilot, secondPilot);
        if (departure is null || date == default || written == default) return new LegDraft(row, key, null, shell);
        if (LegTime.Of(row, Date, OffBlocks, date, written, departure.Zone) is not { } time || row.IsLost) return new LegDraft(row, key, null, shell);
        return new LegDraft(
            row,
            key,
            leg with
            {
                Key = key,
                OffBlocksLocal = time.Written,
                OffBlocks = time.At,
                Aircraft = registration,
                From = from,
                To = to,
                Captain = captain,
                SecondPilot = secondPilot
            },
            shell);
    }

    private static T? Found<T>(Register<T> register, Row row, Column column, string name)
        where T : class
    {
        if (name.Length > 0 && register.Find(name) is null && Undecided.Complains(row, column, name, "one of " + register.Sheet)) return null;
        return register.Resolve(row, column, name);
    }

    // What stands in a cell; an error value, or a formula whose value is not stored, names nobody and nothing.
    private static string Written(Row row, Column column) => row.Raw(column) is { Kind: not CellKind.Error } cell ? cell.Text : "";

    // The cells that a leg can do without; read also for a leg that is lost already, so that all complaints come in one pass.
    private static Leg Rest(Row row, Reference reference, Aircraft? aircraft, Airport? departure, Airport? destination)
    {
        var type = aircraft is null ? null : reference.Types.Find(aircraft.Type);
        var level = row.Optional(Level);
        var leg = new Leg
        {
            Key = default,
            OffBlocksLocal = default,
            OffBlocks = default,
            Aircraft = "",
            From = "",
            To = "",
            Captain = "",
            Alternate = row.Text(Alternate),
            SecondAlternate = row.Text(SecondAlternate),
            Route = row.Text(Route),
            BackupRoute = row.Text(BackupRoute),
            Level = level?.Altitude,
            IsLevelAuto = level is { Altitude: null },
            Setting = row.Text(Setting) is var setting && setting.Equals("auto", StringComparison.OrdinalIgnoreCase) ? "" : setting,
            Rules = row.Optional(Rules),
            Purpose = row.Optional(Purpose),
            FuelPlan = FuelPlanOf(row, type),
            FuelAboard = type is null ? null : row.Fuel(FuelAboard, type.Name, type.FuelDensity),
            Taxi = row.Minutes(Taxi),
            DepartureRunway = row.Text(DepartureRunway),
            ArrivalRunway = row.Text(ArrivalRunway),
            TakeoffAlternate = row.Text(TakeoffAlternate),
            FlightPlan = row.Text(FlightPlanColumn),
            ManifestSent = row.Optional(ManifestSent),
            CrewManifestSent = row.Optional(CrewManifestSent),
            Remarks = row.Text(Remarks),
            Override = row.Text(Override),
            Extra = Extra(row),
            Origin = row.Origin,
        };
        if (type is not null && leg.FuelAboard is { } aboard) Plausible.Fuel(row, FuelAboard, aboard, type.UsableFuel);
        if (type is not null && leg.FuelPlan is FuelPlan.Amount { Block: var block }) Plausible.Fuel(row, FuelPlanColumn, block, type.UsableFuel);
        Found(reference.Airports, row, Alternate, leg.Alternate);
        Found(reference.Airports, row, SecondAlternate, leg.SecondAlternate);
        Found(reference.Airports, row, TakeoffAlternate, leg.TakeoffAlternate);
        Known(row, DepartureRunway, leg.DepartureRunway, departure?.Runways.Select(runway => runway.Ident), departure?.Ident);
        Known(row, ArrivalRunway, leg.ArrivalRunway, destination?.Runways.Select(runway => runway.Ident), destination?.Ident);
        Known(row, Setting, leg.Setting, type?.Tables.CruiseSettings, "Cruise of " + type?.Name);
        return leg;
    }

    private static FuelPlan? FuelPlanOf(Row row, AircraftType? type)
    {
        if (row.Optional(FuelPlanColumn) is not { } written || type is null) return null;
        return row.Pounds(FuelPlanColumn, written.Amount, type.Name, type.FuelDensity) is null ? null : written.ByWeight(type.FuelDensity);
    }

    private static void Known(Row row, Column column, string word, IEnumerable<string>? known, string? where)
    {
        if (word.Length == 0 || known is null) return;
        var words = known.ToArray();
        if (words.Contains(word, StringComparer.OrdinalIgnoreCase)) return;
        var near = Likely.Words(word, words);
        row.Fail(column, $"{column.Name} {word} is not one of {where}" + Likely.Question(near),
            words.Length > 0 ? string.Join(", ", words) : "none is given there");
    }

    private static ImmutableSortedDictionary<string, string> Extra(Row row)
    {
        if (row.Others.IsEmpty) return ImmutableSortedDictionary<string, string>.Empty;
        var extra = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (column, header) in row.Others)
        {
            if (!row.Raw(column).IsBlank) extra[header] = row.Raw(column).Text;
        }

        return extra.ToImmutable();
    }
}
