using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Working of the sun at both ends and of the night time.</summary>
internal static class DaylightWorking
{
    private const string Source = "NOAA solar equations (Meeus); sun's centre at zenith 90.833° for rise and set, 96° for civil twilight";

    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan) =>
        Events(plan.From, plan.Daylight.Departure).Concat(Events(plan.To, plan.Daylight.Destination)).Append(new WorkingStep
        {
            Part = "daylight",
            Name = "night time",
            Formula = "time of the steps of the profile in whose middle the sun is more than 6° below the horizon",
            Value = plan.Daylight.Night.TotalMinutes,
            Unit = "min",
            Inputs = [new("takeoff at night", plan.Daylight.IsNightTakeoff ? 1 : 0, ""), new("landing at night", plan.Daylight.IsNightLanding ? 1 : 0, "")],
            Source = Source,
        });

    private static IEnumerable<WorkingStep> Events(Airport airport, SunDay day)
    {
        foreach (var (name, at) in new[] { ("civil dawn", day.CivilDawn), ("sunrise", day.Sunrise), ("sunset", day.Sunset), ("civil dusk", day.CivilDusk) })
        {
            if (at is not { } moment) continue;
            yield return new WorkingStep
            {
                Part = "daylight",
                Name = $"{name}, {airport.Ident}",
                Formula = "the moment of the local day at which the sun stands at that zenith distance",
                Value = moment.InUtc().TimeOfDay.NanosecondOfDay / 60e9,
                Unit = "min after 00:00 UTC",
                Inputs =
                [
                    new("latitude", airport.Position.LatitudeDeg, "deg N", airport.Origin.ToString()),
                    new("longitude", airport.Position.LongitudeDeg, "deg E", airport.Origin.ToString()),
                ],
                Source = Source,
            };
        }
    }
}
