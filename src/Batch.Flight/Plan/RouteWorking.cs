using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Working of the route: every segment's course, variation and length, and their sum.</summary>
internal static class RouteWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        foreach (var segment in plan.Route.Segments)
        {
            var name = $"{segment.From.Ident}-{segment.To.Ident}";
            yield return new WorkingStep
            {
                Part = "route",
                Name = name + ", distance",
                Formula = "geodesic on the WGS84 ellipsoid",
                Value = segment.Length.Value,
                Unit = "NM",
                Inputs =
                [
                    new("latitude from", segment.From.Position.LatitudeDeg, "deg N"), new("longitude from", segment.From.Position.LongitudeDeg, "deg E"),
                    new("latitude to", segment.To.Position.LatitudeDeg, "deg N"), new("longitude to", segment.To.Position.LongitudeDeg, "deg E"),
                ],
                Source = "Karney 2013, Algorithms for geodesics, doi:10.1007/s00190-012-0578-z",
            };
            yield return new WorkingStep
            {
                Part = "route",
                Name = name + ", magnetic course",
                Formula = "true course − variation (east positive)",
                Value = segment.MagneticCourse.Value,
                Unit = "deg",
                Inputs = [new("true course", segment.TrueCourse.Value, "deg"), new("variation", segment.VariationDeg, "deg")],
                Source = "World Magnetic Model 2025, or the variation of the book",
            };
        }

        yield return new WorkingStep
        {
            Part = "route",
            Name = "route distance",
            Formula = "sum of the segments",
            Value = plan.Route.Length.Value,
            Unit = "NM",
            Inputs = [.. plan.Route.Segments.Select(
                segment => new WorkingInput($"{segment.From.Ident}-{segment.To.Ident}", segment.Length.Value, "NM", plan.Leg.Origin.Cell(nameof(Leg.Route))))],
        };
    }
}
