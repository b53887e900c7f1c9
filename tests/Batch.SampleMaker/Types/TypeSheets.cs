using Batch.SampleMaker.Books;

namespace Batch.SampleMaker.Types;

/// <summary>The sheets that describe the types, apart from their performance.</summary>
public static class TypeSheets
{
    public static ImmutableArray<InventedType> All { get; } = [HaldenH9.Type, BraskB6.Type, TovaneT10.Type];

    public static InventedType Of(string name) => All.First(type => type.Name == name);

    public static SheetTable Types() => SheetTable.Of(
        "Types",
        [
            new("Type", 13), new("Description", 48), new("Engine", 11), Whole("Engines"), new("Fuel", 9), new("Density [lb/USG]", 10, CellFormat.Tenths),
            Whole("Required pilots"), Whole("Seats"),
            new("Pressurised", 11), Whole("Ceiling [ft]"), Whole("Ramp [lb]"), Whole("Takeoff [lb]"), Whole("Landing [lb]"), Whole("Zero-fuel [lb]"),
            Whole("Usable fuel [lb]"),
            Whole("Taxi fuel [lb]"), Whole("Approach fuel [lb]"), Whole("Approach time [min]"), Whole("Glide ratio"), new("Approach category", 10),
            new("ICAO type designator", 11),
            new("ICAO equipment", 14), Tenths("Takeoff headwind credit [%/kt]"), Tenths("Takeoff tailwind penalty [%/kt]"),
            Tenths("Landing headwind credit [%/kt]"),
            Tenths("Landing tailwind penalty [%/kt]"), Tenths("Takeoff upslope penalty [%/%]"), Tenths("Landing downslope penalty [%/%]"),
            Tenths("Takeoff grass [%]"), Tenths("Landing grass [%]"),
            Tenths("Takeoff wet [%]"), Tenths("Landing wet [%]"), new("Certification category", 12),
        ],
        All.Select(type => new object?[]
        {
            type.Name, type.Description, type.Engine, type.Engines, type.Fuel, type.DensityLbPerUsg, 1, type.Seats,
            type.Pressurised ? "yes" : "no", type.Airframe.CeilingFt, type.RampLb, type.TakeoffLb, type.LandingLb, type.ZeroFuelLb, type.UsableFuelLb,
            type.TaxiFuelLb, type.ApproachFuelLb, type.ApproachMin, type.GlideRatio, type.ApproachCategory, "ZZZZ",
            type.Equipment, 0.8, 3.0, 0.8,
            3.0, 7.0, 6.0, 20.0, 18.0,
            5.0, 15.0, "normal",
        }));

    public static SheetTable Stations() => SheetTable.Of(
        "Stations",
        [new("Type", 13), new("Station", 15), new("Kind", 8), new("Arm [in]", 10, CellFormat.Tenths), Whole("Seats"), Whole("Maximum [lb]"),
            Whole("Fill order")],
        All.SelectMany(type =>
            type.Places.Select(place => new object?[] { type.Name, place.Name, place.Kind, place.ArmIn, place.Seats, place.MaximumLb, place.FillOrder })));

    public static SheetTable FuelArms() => SheetTable.Of(
        "FuelArms",
        [new("Type", 13), Whole("Fuel [lb]"), new("Arm [in]", 10, CellFormat.Tenths)],
        All.SelectMany(type => type.FuelArms.Select(point => new object?[] { type.Name, point.FuelLb, point.ArmIn })));

    public static SheetTable Envelope() => SheetTable.Of(
        "Envelope",
        [new("Type", 13), new("Case", 11), Whole("Weight [lb]"), new("Arm [in]", 10, CellFormat.Tenths)],
        All.SelectMany(type => type.Envelope.Select(point => new object?[] { type.Name, point.Case, point.WeightLb, point.ArmIn })));

    private static Column Whole(string header) => new(header, 11, CellFormat.Whole);

    private static Column Tenths(string header) => new(header, 12, CellFormat.Tenths);
}
