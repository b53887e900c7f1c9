using System.Runtime.InteropServices;
using Batch.Flight.Plan;

namespace Batch.Checks.Crews;

/// <summary>Makes the duty table of every person of a week.</summary>
internal static class DutyTables
{
    /// <summary>A table for every person, in the order of the plan.</summary>
    /// <param name="week">The week.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="jobs">Persons at once, 1 or more; the result does not depend on it.</param>
    public static ImmutableArray<DutyTable> Of(WeekUnderCheck week, RuleSet rules, int jobs)
    {
        var tables = new DutyTable[week.Plan.Crew.Length];
        Parallel.For(0, tables.Length, new ParallelOptions { MaxDegreeOfParallelism = jobs }, index => tables[index] = Of(week, rules, week.Plan.Crew[index]));
        return ImmutableCollectionsMarshal.AsImmutableArray(tables);
    }

    private static DutyTable Of(WeekUnderCheck week, RuleSet rules, CrewWeek person)
    {
        var periods = Periods(week, rules, person).ToImmutableArray();
        return new DutyTable
        {
            Code = person.Code,
            Member = week.Plan.Input.Crew.GetValueOrDefault(person.Code),
            LoggedFrom = week.Logged(person.Code) is [var first, ..] ? first.Date : null,
            Periods = periods,
            Limits = Tightest(periods.SelectMany(period => period.Limits)),
            FlightTime = person.FlightTime,
        };
    }

    private static IEnumerable<DutyPeriod> Periods(WeekUnderCheck week, RuleSet rules, CrewWeek person)
    {
        var legs = person.Duties.SelectMany(duty => duty.Legs).Select(week.Leg).OfType<LegPlan.Planned>().ToDictionary(plan => plan.Key);
        if (legs.Count == 0)
        {
            yield break;
        }

        var record = new DutyRecord(week, person.Code, legs.Values.First().From.Zone);
        foreach (var duty in person.Duties)
        {
            var flown = duty.Legs.Where(legs.ContainsKey).Select(key => legs[key]).ToImmutableArray();
            if (flown.IsEmpty)
            {
                continue;
            }

            var last = flown.MaxBy(plan => plan.Times.OnBlocks) ?? flown[^1];
            yield return new DutyPeriod
            {
                Report = duty.Report,
                Release = duty.Release,
                From = flown[0].From.Ident,
                To = last.To.Ident,
                ReportZone = flown[0].From.Zone,
                ReleaseZone = last.To.Zone,
                Legs = duty.Legs,
                FlightTime = duty.FlightTime,
                NightLandings = duty.NightLandings,
                RestBefore = duty.RestBefore,
                Limits = Tightest(flown.SelectMany(plan => new DutyMeasures(new LegUnderCheck(plan, week, Forecasts.None), rules, record).All)),
            };
        }
    }

    /// <summary>Of every limit the one with the least left; where there is none to keep, the most used.</summary>
    private static ImmutableArray<DutyLimit> Tightest(IEnumerable<DutyLimit> limits) =>
        [.. limits.GroupBy(limit => limit.Key, StringComparer.Ordinal)
            .Select(group => group.OrderBy(limit => limit.Left ?? double.PositiveInfinity).ThenByDescending(limit => limit.Used).First())];
}
