using Batch.Flight.Air;

namespace Batch.Flight.Plan;

/// <summary>Working of the flight itself: every slice of climb, cruise and descent, then the sums by phase.</summary>
internal static class ProfileWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        var weightLb = plan.Profile.TakeoffWeight.Value;
        var climbLb = weightLb;
        var before = FlightPhase.Climb;
        foreach (var slice in plan.Profile.Slices)
        {
            // A climb reads its table with the weight at its foot, a cruise with the weight in the middle of the step; a descent with none.
            if (slice.Phase == FlightPhase.Climb && before != FlightPhase.Climb) climbLb = weightLb;
            before = slice.Phase;
            var readLb = slice.Phase == FlightPhase.Climb ? climbLb : weightLb - slice.BurnLb / 2;
            weightLb -= slice.BurnLb;
            var segment = plan.Route.Segments[slice.Segment];
            var name = $"{Phase(slice.Phase)} {segment.From.Ident}-{segment.To.Ident}";
            if (slice.Phase != FlightPhase.Approach)
            {
                yield return new WorkingStep
                {
                    Part = "profile",
                    Name = name + ", ground speed",
                    Formula = "wind triangle of course, true airspeed and wind",
                    Value = slice.GroundSpeedKt,
                    Unit = "kt",
                    Inputs =
                    [
                        new("true course", slice.TrueCourseDeg, "deg"),
                        new("true airspeed", slice.TrueAirspeedKt, "kt"),
                        new("wind from", slice.Air.WindFrom.Value, "deg true"),
                        new("wind speed", slice.Air.WindSpeed.Value, "kt"),
                    ],
                };
            }

            yield return new WorkingStep
            {
                Part = "profile",
                Name = name + ", burn",
                Formula = Formula(slice.Phase),
                Value = slice.BurnLb,
                Unit = "lb",
                Inputs =
                [
                    new("from altitude", slice.StartFt, "ft"),
                    new("to altitude", slice.EndFt, "ft"),
                    new("from distance", slice.StartNm, "NM"),
                    new("to distance", slice.EndNm, "NM"),
                    .. Reading(slice, readLb, slice.BurnLb / (1 + plan.Aircraft.BurnBias)),
                    new("time", slice.Hours * 60, "min"),
                    new("burn bias", plan.Aircraft.BurnBias, "", plan.Aircraft.Origin.Cell(nameof(plan.Aircraft.BurnBias))),
                ],
                Source = Table(slice.Phase, plan),
            };
        }

        var profile = plan.Profile;
        yield return Place("top of climb, distance from the departure", "sum of the slices of the first climb", profile.TopOfClimb.Distance.Value);
        yield return Place("top of descent, distance from the destination", "route distance − distance at the top of descent",
            (profile.Distance - profile.TopOfDescent.Distance).Value,
            new WorkingInput("route distance", profile.Distance.Value, "NM"),
            new WorkingInput("distance at the top of descent", profile.TopOfDescent.Distance.Value, "NM"));
        yield return Place("air distance", "sum of true airspeed × time", profile.AirDistance.Value);
        yield return new WorkingStep
        {
            Part = "profile",
            Name = "cruise level",
            Formula = plan.Leg.IsLevelAuto ? "chosen: see the notes" : "as asked, or lower where the route is too short: see the notes",
            Value = profile.Level.Value,
            Unit = "ft",
            Inputs = plan.Leg.Level is { } asked ? [new("asked", asked.Value, "ft", plan.Leg.Origin.Cell(nameof(plan.Leg.Level)))] : [],
        };
        foreach (var phase in Enum.GetValues<FlightPhase>())
        {
            var slices = plan.Profile.Slices.Where(slice => slice.Phase == phase).ToImmutableArray();
            if (slices.IsEmpty) continue;
            yield return Sum(phase, "distance", slices.Sum(slice => slice.GroundNm), "NM");
            yield return Sum(phase, "time", slices.Sum(slice => slice.Hours) * 60, "min");
            yield return Sum(phase, "burn", slices.Sum(slice => slice.BurnLb), "lb");
        }
    }

    private static string Formula(FlightPhase phase) => phase switch
    {
        FlightPhase.Climb => "what the table gives for the end less what it gives for the start, at the weight and the deviation × (1 + burn bias)",
        FlightPhase.Cruise => "fuel flow at the weight, the deviation and the level × time × (1 + burn bias)",
        FlightPhase.Descent => "what the table gives for the start less what it gives for the end × (1 + burn bias)",
        FlightPhase.Approach => "approach fuel × (1 + burn bias)",
    };

    /// <summary>With what a table is read, and what it gives without the bias.</summary>
    private static IEnumerable<WorkingInput> Reading(ProfileSlice slice, double weightLb, double tableLb)
    {
        if (slice.Phase is FlightPhase.Climb or FlightPhase.Cruise)
        {
            yield return new("weight", weightLb, "lb");
            yield return new("temperature", slice.Air.Temperature.Value, "°C");
            yield return new("deviation from the standard temperature",
                StandardAtmosphere.DeviationK(slice.Air.Temperature, new Feet((slice.StartFt + slice.EndFt) / 2)), "°C");
        }

        yield return slice.Phase switch
        {
            FlightPhase.Cruise => new("fuel flow", tableLb / slice.Hours, "lb/h"),
            FlightPhase.Approach => new("approach fuel", tableLb, "lb"),
            FlightPhase.Climb or FlightPhase.Descent => new("table difference", tableLb, "lb"),
        };
    }

    private static WorkingStep Place(string name, string formula, double value, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "profile", Name = name, Formula = formula, Value = value, Unit = "NM", Inputs = inputs };

    private static WorkingStep Sum(FlightPhase phase, string what, double value, string unit) =>
        new() { Part = "profile", Name = $"{Phase(phase)} {what}", Formula = "sum of the slices", Value = value, Unit = unit };

    private static string Table(FlightPhase phase, LegPlan.Planned plan) => phase switch
    {
        FlightPhase.Climb => plan.Type.Tables.Climb?.Name ?? "",
        FlightPhase.Cruise => plan.Type.Tables.Cruise.GetValueOrDefault(plan.Profile.Setting)?.Name ?? "",
        FlightPhase.Descent => plan.Type.Tables.Descent?.Name ?? "",
        FlightPhase.Approach => "approach allowance of the type",
    };

    private static string Phase(FlightPhase phase) => phase switch
    {
        FlightPhase.Climb => "climb",
        FlightPhase.Cruise => "cruise",
        FlightPhase.Descent => "descent",
        FlightPhase.Approach => "approach",
    };
}
