using Batch.SampleMaker.Books;
using Batch.SampleMaker.Types;

namespace Batch.SampleMaker.Tables;

/// <summary>The performance sheets of all types.</summary>
public static class PerformanceSheets
{
    private static readonly int[] IsaDeviations = [-20, -10, 0, 10, 20];

    public static IEnumerable<SheetTable> All(IReadOnlyList<InventedType> types)
    {
        yield return SheetTable.Of("Climb", [.. Keys("Type", "ISA deviation [°C]", "Weight [lb]", "Altitude [ft]"), Tenths("Time [min]"), Tenths("Fuel [lb]"),
            Tenths("Distance [NM]")], types.SelectMany(Climb));
        yield return SheetTable.Of("Cruise", [new("Type", 12), new("Setting", 12), .. Keys("", "ISA deviation [°C]", "Weight [lb]", "Altitude [ft]").Skip(1),
            Tenths("TAS [kt]"), Tenths("Fuel flow [lb/h]")], types.SelectMany(Cruise));
        yield return SheetTable.Of("Descent", [.. Keys("Type", "Altitude [ft]"), Tenths("Time [min]"), Tenths("Fuel [lb]"), Tenths("Distance [NM]")],
            types.SelectMany(Descent));
        yield return SheetTable.Of("Holding", [.. Keys("Type", "Weight [lb]", "Altitude [ft]"), Tenths("Fuel flow [lb/h]")], types.SelectMany(Holding));
        yield return Runway("Takeoff", types, type => type.TakeoffFlap, Performance.Takeoff);
        yield return Runway("Landing", types, type => type.LandingFlap, Performance.Landing);
        yield return SheetTable.Of("Speeds", [new("Type", 12), new("Flap", 8), .. Keys("", "Weight [lb]").Skip(1), Whole("VR [kt]"), Whole("VX [kt]"),
            Whole("VY [kt]"), Whole("VREF [kt]")], types.SelectMany(Speeds));
    }

    private static IEnumerable<int> Altitudes(InventedType type) => Enumerable.Range(0, (type.Airframe.CeilingFt / 2000) + 1).Select(step => step * 2000)
        .Append(type.Airframe.CeilingFt).Distinct();

    private static IEnumerable<object?[]> Climb(InventedType type) =>
        from isa in IsaDeviations
        from weight in type.Airframe.WeightsLb
        from point in Performance.Climb(type.Airframe, weight, isa, Altitudes(type))
        select new object?[] { type.Name, isa, weight, point.AltitudeFt, Math.Round(point.Minutes, 2), Math.Round(point.FuelLb, 1),
            Math.Round(point.DistanceNm, 2) };

    private static IEnumerable<object?[]> Cruise(InventedType type) =>
        from setting in type.Airframe.Settings
        from isa in IsaDeviations
        from weight in type.Airframe.WeightsLb
        from altitude in Altitudes(type)
        let point = Performance.Cruise(type.Airframe, setting.PowerShare, weight, isa, altitude)
        select new object?[] { type.Name, setting.Name, isa, weight, altitude, Math.Round(point.TasKt, 1), Math.Round(point.FlowLbPerH, 1) };

    private static IEnumerable<object?[]> Descent(InventedType type) =>
        from altitude in Altitudes(type)
        let point = Performance.Descent(type.Airframe, altitude)
        select new object?[] { type.Name, altitude, Math.Round(point.Minutes, 2), Math.Round(point.FuelLb, 1), Math.Round(point.DistanceNm, 2) };

    private static IEnumerable<object?[]> Holding(InventedType type) =>
        from weight in type.Airframe.WeightsLb
        from altitude in Altitudes(type).Where(altitude => altitude % 4000 == 0)
        select new object?[] { type.Name, weight, altitude, Math.Round(Performance.Holding(type.Airframe, weight, altitude), 1) };

    private static SheetTable Runway(string name, IReadOnlyList<InventedType> types, Func<InventedType, string> flap,
        Func<Airframe, double, double, double, (double RollFt, double OverFt)> distance) => SheetTable.Of(
        name,
        [new("Type", 12), new("Flap", 8), .. Keys("", "Weight [lb]", "Pressure altitude [ft]", "Temperature [°C]")
            .Skip(1), Whole("Ground roll [ft]"), Whole("Over obstacle [ft]")],
        from type in types
        from weight in type.Airframe.WeightsLb
        from altitude in new[] { -1000, 0, 2000, 4000, 6000 }
        from temperature in new[] { -20, -10, 0, 10, 20, 30, 40 }
        let point = distance(type.Airframe, weight, altitude, temperature)
        select new object?[] { type.Name, flap(type), weight, altitude, temperature, (int)Math.Ceiling(point.RollFt / 10) * 10,
            (int)Math.Ceiling(point.OverFt / 10) * 10 });

    private static IEnumerable<object?[]> Speeds(InventedType type)
    {
        foreach (var weight in type.Airframe.WeightsLb)
        {
            var stall = type.Airframe.StallKt * Math.Sqrt(weight / type.Airframe.RunwayWeightLb);
            yield return [type.Name, type.TakeoffFlap, weight, (int)Math.Round(stall * 1.22), (int)Math.Round(stall * 1.42), (int)Math.Round(stall * 1.68),
                null];
        }

        foreach (var weight in type.Airframe.WeightsLb)
        {
            yield return [type.Name, type.LandingFlap, weight, null, null, null,
                (int)Math.Round(type.Airframe.StallKt * 1.3 * Math.Sqrt(weight / type.Airframe.RunwayWeightLb))];
        }
    }

    private static IEnumerable<Column> Keys(string first, params string[] headers) =>
        headers.Select(header => new Column(header, 13, CellFormat.Whole)).Prepend(new Column(first, 12));

    private static Column Whole(string header) => new(header, 12, CellFormat.Whole);

    private static Column Tenths(string header) => new(header, 12, CellFormat.Tenths);
}
