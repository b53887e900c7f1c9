using System.Globalization;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Types sheet: one aircraft type a row.</summary>
internal static class TypesSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Types", "operator", "Aircraft types: limits, fuel, corrections of runway distances.");

    /// <summary>The words for engines.</summary>
    private static readonly ImmutableArray<(string Word, EngineKind Value)> Engines =
        [("turboprop", EngineKind.Turboprop), ("piston", EngineKind.Piston), ("jet", EngineKind.Jet), ("reciprocating", EngineKind.Piston),
            ("turbofan", EngineKind.Jet)];

    /// <summary>The words for fuels.</summary>
    public static readonly ImmutableArray<(string Word, FuelKind Value)> Fuels =
        [("Jet A-1", FuelKind.JetA1), ("Avgas", FuelKind.Avgas), ("Jet A", FuelKind.JetA1), ("Jet", FuelKind.JetA1), ("Avgas 100LL", FuelKind.Avgas),
            ("100LL", FuelKind.Avgas), ("kerosene", FuelKind.JetA1)];

    private static readonly Column<string> Name =
        Plan.Add(ColumnKinds.Text("Type", nameof(AircraftType.Name), "Name by which the other sheets refer to the type.", ColumnKinds.Starred));
    private static readonly Column<string> Description = Plan.Add(ColumnKinds.Text("Description", nameof(AircraftType.Description), "Free description."));
    private static readonly Column<EngineKind> Engine = Plan.Add(ColumnKinds.Word("Engine", nameof(AircraftType.Engine), "How it is powered.", Engines));
    private static readonly Column<int> EngineCount = Plan.Add(ColumnKinds.Whole("Engines", nameof(AircraftType.Engines), "Number of engines.", 1, 8));
    private static readonly Column<FuelKind> Fuel = Plan.Add(ColumnKinds.Word("Fuel", nameof(AircraftType.Fuel), "The fuel it burns.", Fuels));
    private static readonly Column<double> Density = Plan.Add(ColumnKinds.AboveZero(Quantity.Density, "Density", nameof(AircraftType.FuelDensity),
        "Density of the fuel; turns gallons and litres into weight.", false, "Fuel density"));
    private static readonly Column<int> Pilots =
        Plan.Add(ColumnKinds.Whole("Required pilots", nameof(AircraftType.RequiredPilots), "Pilots the type certificate requires.", 1, 2, false, "Pilots"));
    private static readonly Column<int> Seats =
        Plan.Add(ColumnKinds.Whole("Seats", nameof(AircraftType.Seats), "Passenger seats.", 0, 100, false, "Passenger seats"));
    private static readonly Column<bool> Pressurised =
        Plan.Add(ColumnKinds.YesNo("Pressurised", nameof(AircraftType.Pressurised), "Whether the cabin is pressurised.", false, "Pressurized"));
    private static readonly Column<double> Ceiling = Plan.Add(
        ColumnKinds.AboveZero(Quantity.Altitude, "Ceiling", nameof(AircraftType.Ceiling), "Greatest operating altitude.", false, "Maximum operating altitude"));
    private static readonly Column<double> Ramp = Maximum("Ramp", nameof(AircraftType.MaximumRamp), "Maximum ramp (taxi) weight.", "ramp", "taxi");
    private static readonly Column<double> Takeoff = Maximum("Takeoff", nameof(AircraftType.MaximumTakeoff), "Maximum takeoff weight.", "takeoff");
    private static readonly Column<double> Landing = Maximum("Landing", nameof(AircraftType.MaximumLanding), "Maximum landing weight.", "landing");
    private static readonly Column<double> ZeroFuel = Maximum("Zero-fuel", nameof(AircraftType.MaximumZeroFuel), "Maximum zero-fuel weight.", "zero fuel");
    private static readonly Column<FuelAmount> UsableFuel =
        Plan.Add(ColumnKinds.Fuel("Usable fuel", nameof(AircraftType.UsableFuel), "Usable fuel with full tanks."));
    private static readonly Column<FuelAmount> TaxiFuel =
        Plan.Add(ColumnKinds.Fuel("Taxi fuel", nameof(AircraftType.TaxiFuel), "Fuel for start, run-up and taxi out."));
    private static readonly Column<FuelAmount> ApproachFuel =
        Plan.Add(ColumnKinds.Fuel("Approach fuel", nameof(AircraftType.ApproachFuel), "Fuel for approach and landing beyond the descent table."));
    private static readonly Column<double> ApproachTime = Plan.Add(
        ColumnKinds.Span(Quantity.Minutes, "Approach time", nameof(AircraftType.ApproachTime), "Time for approach and landing beyond the descent table."));
    private static readonly Column<double> GlideRatio =
        Plan.Add(ColumnKinds.Positive("Glide ratio", nameof(AircraftType.GlideRatio), "Still-air distance over height in a power-off glide."));
    private static readonly Column<string> Category =
        Plan.Add(ColumnKinds.Ident("Approach category", nameof(AircraftType.ApproachCategory), "Approach category A to E."));
    private static readonly Column<CertificationCategory> Certification = Plan.Add(
        ColumnKinds.Word("Certification category", nameof(AircraftType.Certification), "Category of the type certificate; landing margins depend on it.",
        [("normal", CertificationCategory.Normal), ("commuter", CertificationCategory.Commuter), ("transport", CertificationCategory.Transport),
            ("utility", CertificationCategory.Normal), ("acrobatic", CertificationCategory.Normal)]));

    private static readonly Column<string> Designator = Plan.Add(ColumnKinds.Ident("ICAO type designator", nameof(AircraftType.Designator),
        "Type designator of flight plans; ZZZZ where the type has none.", false, "Type designator", "ICAO designator"));
    private static readonly Column<string> Equipment = Plan.Add(ColumnKinds.Text("ICAO equipment", nameof(AircraftType.Equipment),
        "Equipment of flight plans, item 10, such as SDFGRY/LB1; further words, such as PBN/B2D2, go to item 18.", false, "Equipment"));
    private static readonly Column<double> ChordLeadingEdge = Plan.Add(ColumnKinds.Number(Quantity.Arm, "LEMAC", nameof(MeanAerodynamicChord.LeadingEdge),
        "Arm of the leading edge of the mean aerodynamic chord; with MAC the working shows centres of gravity in percent.", false, "Leading edge of MAC"));
    private static readonly Column<double> Chord = Plan.Add(ColumnKinds.AboveZero(Quantity.Arm, "MAC", nameof(MeanAerodynamicChord.Length),
        "Length of the mean aerodynamic chord.", false, "Mean aerodynamic chord"));
    private static readonly Column<double> TakeoffHeadwind =
        PerKnot("Takeoff headwind credit", nameof(RunwayCorrections.TakeoffHeadwindPerKnot), "Takeoff distance less per knot of headwind.");
    private static readonly Column<double> TakeoffTailwind =
        PerKnot("Takeoff tailwind penalty", nameof(RunwayCorrections.TakeoffTailwindPerKnot), "Takeoff distance more per knot of tailwind.");
    private static readonly Column<double> LandingHeadwind =
        PerKnot("Landing headwind credit", nameof(RunwayCorrections.LandingHeadwindPerKnot), "Landing distance less per knot of headwind.");
    private static readonly Column<double> LandingTailwind =
        PerKnot("Landing tailwind penalty", nameof(RunwayCorrections.LandingTailwindPerKnot), "Landing distance more per knot of tailwind.");
    private static readonly Column<double> Upslope =
        PerPercent("Takeoff upslope penalty", nameof(RunwayCorrections.TakeoffUpslopePerPercent), "Takeoff distance more per percent of upslope.");
    private static readonly Column<double> Downslope =
        PerPercent("Landing downslope penalty", nameof(RunwayCorrections.LandingDownslopePerPercent), "Landing distance more per percent of downslope.");
    private static readonly Column<double> TakeoffGrass =
        Percent("Takeoff grass", nameof(RunwayCorrections.TakeoffGrass), "Takeoff distance more on dry grass.");
    private static readonly Column<double> LandingGrass =
        Percent("Landing grass", nameof(RunwayCorrections.LandingGrass), "Landing distance more on dry grass.");
    private static readonly Column<double> TakeoffWet = Percent("Takeoff wet", nameof(RunwayCorrections.TakeoffWet), "Takeoff distance more on a wet runway.");
    private static readonly Column<double> LandingWet = Percent("Landing wet", nameof(RunwayCorrections.LandingWet), "Landing distance more on a wet runway.");

    /// <summary>Reads the types, without their stations, envelopes and tables.</summary>
    public static Register<AircraftType> Read(Shelf shelf)
    {
        var types = new Register<AircraftType>(Plan.Name);
        foreach (var row in shelf.Rows(Plan))
        {
            var name = row.NeededText(Name);
            types.Take(name, Name, row, row.IsLost ? null : Type(row, name));
        }

        return types;
    }

    private static AircraftType Type(Row row, string name)
    {
        var density = row.Optional(Density);
        if (density is < 5 or > 8) row.Complain(State.Caution, Density,
            string.Create(CultureInfo.InvariantCulture, $"Density of {density:0.###} lb/USG is that of no aviation fuel; was it given in another unit?"),
            "about 6.0 lb/USG for Avgas, 6.7 lb/USG for Jet A-1");
        return new AircraftType
        {
            Name = name,
            Description = row.Text(Description),
            Engine = row.Optional(Engine),
            Engines = row.Optional(EngineCount),
            Fuel = row.Optional(Fuel),
            FuelDensity = density,
            RequiredPilots = row.Optional(Pilots),
            Seats = row.Optional(Seats),
            Pressurised = row.Optional(Pressurised),
            Ceiling = row.Feet(Ceiling),
            MaximumRamp = row.Pounds(Ramp),
            MaximumTakeoff = row.Pounds(Takeoff),
            MaximumLanding = row.Pounds(Landing),
            MaximumZeroFuel = row.Pounds(ZeroFuel),
            UsableFuel = row.Fuel(UsableFuel, name, density),
            TaxiFuel = row.Fuel(TaxiFuel, name, density),
            ApproachFuel = row.Fuel(ApproachFuel, name, density),
            ApproachTime = row.Minutes(ApproachTime),
            GlideRatio = row.Optional(GlideRatio),
            Chord = row.Optional(ChordLeadingEdge) is { } leadingEdge && row.Optional(Chord) is { } chord
                ? new MeanAerodynamicChord(new Inches(leadingEdge), new Inches(chord))
                : null,
            Certification = row.Optional(Certification),
            ApproachCategory = row.Text(Category),
            Designator = row.Text(Designator),
            Equipment = row.Text(Equipment),
            Corrections = new RunwayCorrections
            {
                TakeoffHeadwindPerKnot = row.Fraction(TakeoffHeadwind),
                TakeoffTailwindPerKnot = row.Fraction(TakeoffTailwind),
                LandingHeadwindPerKnot = row.Fraction(LandingHeadwind),
                LandingTailwindPerKnot = row.Fraction(LandingTailwind),
                TakeoffUpslopePerPercent = row.Fraction(Upslope),
                LandingDownslopePerPercent = row.Fraction(Downslope),
                TakeoffGrass = row.Fraction(TakeoffGrass),
                LandingGrass = row.Fraction(LandingGrass),
                TakeoffWet = row.Fraction(TakeoffWet),
                LandingWet = row.Fraction(LandingWet),
            },
            Origin = row.Origin,
        };
    }

    private static Column<double> Maximum(string name, string field, string meaning, params string[] words) => Plan.Add(ColumnKinds.AboveZero(
        Quantity.Weight,
        name,
        field,
        meaning,
        false,
        [.. words.SelectMany(word => new[] { word, word + " weight", "maximum " + word, "maximum " + word + " weight", word + " maximum weight",
            word + " maximum", "max " + word, "max " + word + " weight", word + " mass", "maximum " + word + " mass" })]));

    private static Column<double> PerKnot(string name, string field, string meaning) =>
        Plan.Add(ColumnKinds.NotNegative(Quantity.PercentPerKnot, name, field, meaning));

    private static Column<double> PerPercent(string name, string field, string meaning) =>
        Plan.Add(ColumnKinds.NotNegative(Quantity.PercentPerPercent, name, field, meaning));

    private static Column<double> Percent(string name, string field, string meaning) =>
        Plan.Add(ColumnKinds.NotNegative(Quantity.Percent, name, field, meaning));
}
