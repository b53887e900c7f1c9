namespace Batch.Flight.Plan;

/// <summary>Working of the navigation log: heading, ground speed, time and fuel of every stretch.</summary>
internal static class LogWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        var before = plan.Log[0];
        yield return Step($"{before.Point}, altitude", "elevation of the departure", before.Altitude.Value, "ft",
            new WorkingInput("elevation", before.Altitude.Value, "ft", plan.From.Origin.Cell(nameof(plan.From.Elevation))));
        foreach (var line in plan.Log.Skip(1))
        {
            var name = $"{before.Point}-{line.Point}";
            if (line is
                {
                    Heading: { } heading, TrueCourse: { } course, VariationDeg: { } variation, TrueAirspeed: { } airspeed, WindFrom: { } from,
                    WindSpeed: { } wind
                })
            {
                yield return Step(name + ", magnetic heading", "true course + wind correction − variation, by the wind triangle", heading.Value, "deg",
                    new WorkingInput("true course", course.Value, "deg"),
                    new WorkingInput("variation", variation, "deg"),
                    new WorkingInput("true airspeed", airspeed.Value, "kt"),
                    new WorkingInput("wind from", from.Value, "deg true"),
                    new WorkingInput("wind speed", wind.Value, "kt"));
            }

            if (line is { MagneticCourse: { } magnetic, TrueCourse: { } trueCourse, VariationDeg: { } east })
            {
                yield return Step(name + ", magnetic course", "true course at the start of the stretch − variation (east positive)", magnetic.Value, "deg",
                    new WorkingInput("true course", trueCourse.Value, "deg"), new WorkingInput("variation", east, "deg"));
            }

            if (line.GroundSpeed is { } groundSpeed)
            {
                yield return Step(name + ", ground speed", "distance of the stretch ÷ its time", groundSpeed.Value, "kt",
                    new WorkingInput("distance", line.Distance.Value, "NM"), new WorkingInput("time", line.Time.TotalMinutes, "min"));
            }

            if (line.Temperature is { } temperature)
                yield return Step(name + ", temperature", "mean of the steps of the profile by their time", temperature.Value, "°C",
                    new WorkingInput("time", line.Time.TotalMinutes, "min"));
            if (line.MinimumAltitude is { } minimum)
                yield return Step(name + ", minimum altitude", "the highest of the segments flown: the airway's, else the altitude grid's", minimum.Value,
                    "ft");
            yield return Step(line.Point + ", altitude", "where the profile is at the point", line.Altitude.Value, "ft",
                new WorkingInput("along the route", line.AlongRoute.Value, "NM"));
            yield return Step(line.Point + ", distance to go", "route distance − distance along the route", (plan.Route.Length - line.AlongRoute).Value, "NM",
                new WorkingInput("route distance", plan.Route.Length.Value, "NM"), new WorkingInput("along the route", line.AlongRoute.Value, "NM"));
            yield return Step(line.Point + ", time since takeoff", "time over − takeoff", (line.Over - plan.Times.Takeoff).TotalMinutes, "min",
                new WorkingInput("time over", MinutesOfDay(line.Over), "min after 00:00 UTC"),
                new WorkingInput("takeoff", MinutesOfDay(plan.Times.Takeoff), "min after 00:00 UTC"));
            yield return Step(name + ", time over", "time over the point before + time of the stretch", MinutesOfDay(line.Over), "min after 00:00 UTC",
                new WorkingInput("before", MinutesOfDay(before.Over), "min after 00:00 UTC"), new WorkingInput("time", line.Time.TotalMinutes, "min"));
            yield return Step(name + ", fuel remaining", "remaining at the point before − burn of the stretch", line.Remaining.Value, "lb",
                new WorkingInput("before", before.Remaining.Value, "lb"), new WorkingInput("burn", line.Burn.Value, "lb"));
            before = line;
        }
    }

    private static WorkingStep Step(string name, string formula, double value, string unit, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "log", Name = name, Formula = formula, Value = value, Unit = unit, Inputs = inputs };

    private static double MinutesOfDay(Instant at) => at.InUtc().TimeOfDay.NanosecondOfDay / 60e9;
}
