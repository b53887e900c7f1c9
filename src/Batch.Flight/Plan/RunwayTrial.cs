using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>A takeoff or landing tried on one runway.</summary>
internal static class RunwayTrial
{
    /// <summary>The distances on a runway with the flap that needs the least, and how much room there is.</summary>
    /// <param name="request">The request.</param>
    /// <param name="runwayCase">Takeoff or landing.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="said">Sentences that hold already.</param>
    public static RunwayResult On(RunwayRequest request, RunwayCase runwayCase, Runway runway, ImmutableArray<string> said)
    {
        var assumptions = said.ToBuilder();
        var elevation = runway.ThresholdElevation ?? request.Airport.Elevation;
        var pressureAltitude = request.AltimeterSetting is { } setting ? StandardAtmosphere.PressureAltitude(elevation, setting) : elevation;
        if (request.AltimeterSetting is null)
            assumptions.Add($"no altimeter setting known at {request.Airport.Ident}: the elevation was taken as pressure altitude");
        if (request.Air.WindAssumed) assumptions.Add($"no surface wind known at {request.Airport.Ident}: calm");
        else if (request.IsWindFromAloft)
            assumptions.Add($"no surface wind known at {request.Airport.Ident}: the wind aloft was taken, its headwind not credited");
        if (request.Air.TemperatureAssumed) assumptions.Add($"no surface temperature known at {request.Airport.Ident}: the standard atmosphere");

        var angle = (request.Air.WindFrom.Value - runway.TrueBearing.Value) * Math.PI / 180;
        var (headwindKt, crosswindKt) = (request.Air.WindSpeed.Value * Math.Cos(angle), request.Air.WindSpeed.Value * Math.Sin(angle));
        var factors = RunwayFactors.Of(
            runwayCase, runway, request.IsWindFromAloft ? Math.Min(headwindKt, 0) : headwindKt, request.IsWet, assumptions, out var missing);
        if (missing is not null) return new RunwayResult.NotComputed(PlainSentence.Of(missing));

        var (weightLb, altitudeFt, temperatureC) = (request.Weight.Value, pressureAltitude.Value, request.Air.Temperature.Value);
        RunwayTable[] tables = [.. runwayCase.Tables.Select(flap => new RunwayTable(flap.Key, flap.Value, request.MayUseTableEdge))];
        var readings = tables.Select(table => (Table: table, Reading: table.Read(weightLb, altitudeFt, temperatureC))).ToArray();
        var usable = readings.Where(entry => entry.Reading.Why is null).ToArray();
        if (usable.Length == 0) return new RunwayResult.NotComputed(PlainSentence.Of(readings[0].Reading.Why ?? $"no {runwayCase.Word} table can be read"));
        var (table, reading) = usable.MinBy(entry => entry.Reading.DistanceFt);
        assumptions.AddRange(reading.Edges);

        var correction = factors.Aggregate(1d, (product, factor) => product * factor.Factor);
        var (availableFt, runFt) = runwayCase.IsTakeoff
            ? ((runway.TakeoffDistance ?? runway.TakeoffRun).Value, (double?)runway.TakeoffRun.Value)
            : (runway.LandingDistance.Value, null);
        var stopAvailableFt = runwayCase.IsTakeoff ? (runway.AccelerateStop ?? runway.TakeoffRun).Value : double.PositiveInfinity;
        bool Fits(double rollFt, double distanceFt, double stopFt) =>
            distanceFt * correction * runwayCase.RuleFactor <= availableFt && (runFt is null
                || rollFt * correction <= runFt) && stopFt * correction <= stopAvailableFt;
        var hasStop = runwayCase.IsTakeoff && table.HasStop;
        if (hasStop && factors.Length > 0)
            assumptions.Add("the accelerate-stop distance is corrected as the takeoff distance: the book gives no corrections of its own for it");
        double? greatestLb = null;
        var isTableEnd = false;
        foreach (var each in tables)
        {
            if (each.GreatestWeight(altitudeFt, temperatureC, Fits) is not { } lb || lb <= greatestLb) continue;
            (greatestLb, isTableEnd) = (lb, lb >= each.LastWeightLb);
        }

        return new RunwayResult.Computed(new RunwayUse
        {
            Runway = runway,
            IsNamed = request.NamedRunway.Length > 0,
            Flap = table.Flap,
            Weight = request.Weight,
            PressureAltitude = pressureAltitude,
            Temperature = request.Air.Temperature,
            IsTemperatureAssumed = request.Air.TemperatureAssumed,
            IsWindAssumed = request.Air.WindAssumed,
            IsWindFromAloft = request.IsWindFromAloft && !request.Air.WindAssumed,
            WindFrom = request.Air.WindFrom,
            WindSpeed = request.Air.WindSpeed,
            Headwind = new Knots(headwindKt),
            Crosswind = new Knots(crosswindKt),
            IsWet = request.IsWet,
            TableDistance = new Feet(reading.DistanceFt),
            TableRoll = new Feet(reading.RollFt),
            Factors = factors,
            CorrectedDistance = new Feet(reading.DistanceFt * correction),
            CorrectedRoll = new Feet(reading.RollFt * correction),
            Required = new Feet(reading.DistanceFt * correction * runwayCase.RuleFactor),
            Available = new Feet(availableFt),
            RunAvailable = runFt is { } run ? new Feet(run) : null,
            TableStop = hasStop ? new Feet(reading.StopFt) : null,
            CorrectedStop = hasStop ? new Feet(reading.StopFt * correction) : null,
            StopAvailable = hasStop ? new Feet(stopAvailableFt) : null,
            GreatestWeight = greatestLb is { } greatest ? new Pounds(greatest) : null,
            IsGreatestWeightTableEnd = isTableEnd,
            HighestTemperature = tables.Max(each => each.HighestTemperature(weightLb, altitudeFt, Fits)) is { } highest ? new Celsius(highest) : null,
            Speeds = Speeds(request, table.Flap, assumptions),
            Assumptions = [.. assumptions.Select(PlainSentence.Of)],
        });
    }

    private static ImmutableArray<NamedSpeed> Speeds(RunwayRequest request, string flap, ImmutableArray<string>.Builder assumptions)
    {
        if (!request.Type.Tables.Speeds.TryGetValue(flap, out var table)) return [];
        Span<double> values = stackalloc double[table.ValueNames.Length];
        var reading = table.Read([request.Weight.Value], values);
        if (!reading.IsInside)
        {
            assumptions.Add(table.Sentence(reading) + (request.MayUseTableEdge ? ": the speeds at the edge were taken" : ": no speeds"));
            if (!request.MayUseTableEdge) return [];
        }

        var speeds = ImmutableArray.CreateBuilder<NamedSpeed>();
        for (var i = 0; i < values.Length; i++)
            if (table.Has(i)) speeds.Add(new NamedSpeed(PerformanceTable.NameOf(table.ValueNames[i]), new Knots(values[i])));
        return speeds.ToImmutable();
    }
}
