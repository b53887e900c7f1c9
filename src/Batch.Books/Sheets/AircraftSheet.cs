using System.Globalization;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Aircraft sheet: one aircraft a row.</summary>
internal static class AircraftSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Aircraft", "operator", "The fleet: weights, dates due, equipment.");

    private static readonly Column<string> Registration =
        Plan.Add(ColumnKinds.Ident("Registration", nameof(Aircraft.Registration), "Registration mark.", ColumnKinds.Starred, "Tail", "Reg"));
    private static readonly Column<string> Type = Plan.Add(ColumnKinds.Text("Type", nameof(Aircraft.Type), "Type as in Types.", ColumnKinds.Starred));
    private static readonly Column<double> EmptyWeight = Plan.Add(ColumnKinds.AboveZero(Quantity.Weight, "Basic empty weight",
        nameof(Aircraft.BasicEmptyWeight), "Basic empty weight.", ColumnKinds.Starred, "Empty weight", "BEW"));
    private static readonly Column<double> Arm = Plan.Add(ColumnKinds.Number(Quantity.Arm, "Arm", "Arm", "Arm of the basic empty weight; this or the moment."));
    private static readonly Column<double> Moment =
        Plan.Add(ColumnKinds.Number(Quantity.Moment, "Moment", nameof(Aircraft.BasicEmptyMoment), "Moment of the basic empty weight; this or the arm."));
    private static readonly Column<int> PilotsIncluded = Plan.Add(ColumnKinds.Whole("Pilots included", nameof(Aircraft.PilotsIncluded),
        "Pilots already counted in the basic empty weight.", 0, 2, false, "Pilots included in it"));
    private static readonly Column<LocalDate> WeighedOn =
        Plan.Add(ColumnKinds.Date("Weighed on", nameof(Aircraft.WeighedOn), "Date of the last weighing.", false, "Weighed"));
    private static readonly Column<double> BurnBias = Plan.Add(ColumnKinds.Number(Quantity.Percent, "Fuel burn bias", nameof(Aircraft.BurnBias),
        "How much more it burns than the tables say; empty for nothing more."));
    private static readonly Column<double> Ceiling =
        Plan.Add(ColumnKinds.AboveZero(Quantity.Altitude, "Ceiling", nameof(Aircraft.Ceiling), "Ceiling of this aircraft where lower than the type's."));
    private static readonly Column<string> Home =
        Plan.Add(ColumnKinds.Ident("Home", nameof(Aircraft.Home), "Ident of the airport where it is kept.", false, "Home base", "Base"));
    private static readonly Column<double> Hours = Plan.Add(ColumnKinds.Span(Quantity.Hours, "Hours", nameof(Aircraft.Hours), "Airframe hours."));
    private static readonly Column<int> Landings = Plan.Add(ColumnKinds.Whole("Landings", nameof(Aircraft.Landings), "Airframe landings.", 0, int.MaxValue));
    private static readonly Column<double> NextInspection = Plan.Add(ColumnKinds.Span(Quantity.Hours, "Next inspection at", nameof(Aircraft.NextInspectionAt),
        "Airframe hours at which the next inspection is due.", false, "Next inspection"));
    private static readonly Column<LocalDate> Annual = Due("Annual", nameof(Aircraft.AnnualDue), "Annual inspection due.");
    private static readonly Column<LocalDate> AltimeterStatic =
        Due("Altimeter-static", nameof(Aircraft.AltimeterStaticDue), "Altimeter and static system test due.");
    private static readonly Column<LocalDate> Transponder = Due("Transponder", nameof(Aircraft.TransponderDue), "Transponder test due.");
    private static readonly Column<LocalDate> Locator = Due("ELT", nameof(Aircraft.ElectronicLocatorDue), "Emergency locator transmitter inspection due.");
    private static readonly Column<LocalDate> VorChecked = Plan.Add(ColumnKinds.Date("VOR checked on", nameof(Aircraft.VorCheckedOn),
        "Date of the last operational check of the VOR receivers.", false, "VOR check", "VOR checked"));
    private static readonly Column<LocalDate> Weighing = Due("Weighing", nameof(Aircraft.WeighingDue), "Weighing due.");
    private static readonly Column<bool> Autopilot = Plan.Add(ColumnKinds.YesNo("Autopilot for one pilot", nameof(Aircraft.AutopilotForOnePilot),
        "Whether it has an autopilot approved for flight by one pilot.", false, "Autopilot"));
    private static readonly Column<string> Overwater = Plan.Add(ColumnKinds.Word("Overwater kit", nameof(Aircraft.OverwaterKit), "Overwater kit aboard.",
        [("none", "none"), ("vests", "vests"), ("rafts", "rafts"), ("vest", "vests"), ("raft", "rafts"), ("life vests", "vests"), ("life rafts", "rafts"),
            ("no", "none")]));
    private static readonly Column<double> Oxygen =
        Plan.Add(ColumnKinds.Span(Quantity.Minutes, "Oxygen", nameof(Aircraft.Oxygen), "How long the oxygen lasts for all occupants."));
    private static readonly Column<bool> QuickMasks = Plan.Add(ColumnKinds.YesNo("Quick-donning masks", nameof(Aircraft.QuickDonningMasks),
        "Whether every pilot's place has an approved quick-donning oxygen mask.", false, "Quick donning masks"));
    private static readonly Column<bool> Icing = Plan.Add(
        ColumnKinds.YesNo("Icing protection", nameof(Aircraft.IcingProtection), "Whether it is approved and equipped for flight in icing.", false, "Icing"));
    private static readonly Column<bool> InstrumentEquipment =
        Plan.Add(ColumnKinds.YesNo("IFR equipment", nameof(Aircraft.InstrumentEquipment), "Whether it is equipped for flight under IFR."));
    private static readonly Column<bool> NightEquipment =
        Plan.Add(ColumnKinds.YesNo("Night equipment", nameof(Aircraft.NightEquipment), "Whether it is equipped for flight at night."));
    private static readonly Column<bool> SecondPower = Plan.Add(ColumnKinds.YesNo("Second power source", nameof(Aircraft.SecondPowerSource),
        "Whether electric power and the gyros have a second source, as a single-engine aircraft with passengers under IFR wants."));
    private static readonly Column<bool> TrendMonitoring =
        Plan.Add(ColumnKinds.YesNo("Engine trend monitoring", nameof(Aircraft.TrendMonitoring), "Whether an engine trend monitoring programme is kept."));
    private static readonly Column<string> TerrainWarning = Plan.Add(ColumnKinds.Word("TAWS", nameof(Aircraft.TerrainWarning),
        "Class of the terrain awareness and warning system.", [("A", "A"), ("B", "B"), ("none", "none"), ("class A", "A"), ("class B", "B"), ("no", "none")],
        false, "Terrain warning"));
    private static readonly Column<string> Deferred =
        Plan.Add(ColumnKinds.Text("Deferred items", nameof(Aircraft.DeferredItems), "Open deferred items; empty for none."));
    private static readonly Column<string> Status = Plan.Add(ColumnKinds.Text("Status", nameof(Aircraft.Status), "Status, such as in service."));

    /// <summary>Reads the fleet.</summary>
    public static Register<Aircraft> Read(Shelf shelf, Register<AircraftType> types, Register<Airport> airports)
    {
        var fleet = new Register<Aircraft>(Plan.Name);
        foreach (var row in shelf.Rows(Plan))
        {
            var registration = row.NeededText(Registration);
            fleet.Take(registration, Registration, row, OneAircraft(row, registration, types, airports));
        }

        return fleet;
    }

    private static Aircraft? OneAircraft(Row row, string registration, Register<AircraftType> types, Register<Airport> airports)
    {
        var typeName = row.NeededText(Type);
        var type = types.Resolve(row, Type, typeName);
        var weight = row.Needed(EmptyWeight);
        var aircraft = new Aircraft
        {
            Registration = registration,
            Type = type?.Name ?? typeName,
            BasicEmptyWeight = new Pounds(weight),
            BasicEmptyMoment = MomentOf(row, weight),
            PilotsIncluded = row.Optional(PilotsIncluded) ?? 0,
            WeighedOn = row.Optional(WeighedOn),
            BurnBias = row.Fraction(BurnBias) ?? 0,
            Ceiling = row.Feet(Ceiling),
            Home = row.Text(Home),
            Hours = row.Optional(Hours),
            Landings = row.Optional(Landings),
            NextInspectionAt = row.Optional(NextInspection),
            AnnualDue = row.Optional(Annual),
            AltimeterStaticDue = row.Optional(AltimeterStatic),
            TransponderDue = row.Optional(Transponder),
            ElectronicLocatorDue = row.Optional(Locator),
            VorCheckedOn = row.Optional(VorChecked),
            WeighingDue = row.Optional(Weighing),
            AutopilotForOnePilot = row.Optional(Autopilot),
            OverwaterKit = row.Text(Overwater),
            Oxygen = row.Minutes(Oxygen),
            QuickDonningMasks = row.Optional(QuickMasks),
            IcingProtection = row.Optional(Icing),
            InstrumentEquipment = row.Optional(InstrumentEquipment),
            NightEquipment = row.Optional(NightEquipment),
            SecondPowerSource = row.Optional(SecondPower),
            TrendMonitoring = row.Optional(TrendMonitoring),
            TerrainWarning = row.Text(TerrainWarning),
            DeferredItems = row.Text(Deferred),
            Status = row.Text(Status),
            Origin = row.Origin,
        };
        airports.Resolve(row, Home, aircraft.Home, State.Caution);
        if (row.IsLost || type is null) return null;
        LookPlausible(row, aircraft, type);
        return aircraft;
    }

    private static PoundInches? MomentOf(Row row, double weight)
    {
        var arm = row.Optional(Arm);
        var moment = row.Optional(Moment);
        if (arm is null && moment is null && row.Raw(Arm).IsBlank && row.Raw(Moment).IsBlank)
        {
            row.ComplainOfRow(State.Fail, "neither Arm nor Moment is given for the basic empty weight", "an arm or a moment");
            return null;
        }

        if (arm is { } a && moment is { } m && weight > 0 && Math.Abs((m / weight) - a) > 0.1)
        {
            row.Complain(State.Caution, Moment, string.Create(CultureInfo.InvariantCulture,
                $"Moment and Arm do not agree: the moment makes an arm of {m / weight:0.00} in; the moment is used"));
        }

        if (moment is { } given) return new PoundInches(given);
        return arm is { } at && weight > 0 ? new PoundInches(weight * at) : null;
    }

    private static void LookPlausible(Row row, Aircraft aircraft, AircraftType type)
    {
        var limit = type.MaximumZeroFuel ?? type.MaximumLanding ?? type.MaximumTakeoff ?? type.MaximumRamp;
        if (limit is { } most && aircraft.BasicEmptyWeight >= most)
        {
            row.Complain(State.Caution, EmptyWeight, $"Basic empty weight is not below the type's greatest weight of {most}; was it given in another unit?",
                "less than " + most);
        }
        else if (limit is { } greatest && aircraft.BasicEmptyWeight.Value < 0.3 * greatest.Value)
        {
            row.Complain(State.Caution, EmptyWeight,
                $"Basic empty weight is less than a third of the type's greatest weight of {greatest}; was it given in kilograms?",
                "a weight in the unit of the header");
        }
    }

    private static Column<LocalDate> Due(string name, string field, string meaning) =>
        Plan.Add(ColumnKinds.Date(name + " due", field, meaning, false, name, name + " due date"));
}
