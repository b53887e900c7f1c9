using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>What each person does in the week: legs in order, gathered into duties.</summary>
internal static class CrewChain
{
    /// <summary>Time on the ground from release to report that separates two duties: ten hours, the rest that 14 CFR 135.267(d) asks for.</summary>
    private static readonly Duration Rest = Duration.FromHours(10);

    /// <summary>The week of one person.</summary>
    /// <param name="code">Code of the person.</param>
    /// <param name="member">The person; null where the Crew sheet does not have the code.</param>
    /// <param name="plans">The legs the person flies, in any order.</param>
    /// <param name="logged">What the person has already flown.</param>
    /// <param name="report">From report to the first off blocks.</param>
    /// <param name="release">From the last on blocks to release.</param>
    public static CrewWeek Of(
        string code, CrewMember? member, IReadOnlyCollection<LegPlan> plans, IEnumerable<LoggedDuty> logged, Duration report, Duration release)
    {
        var planned = plans.OfType<LegPlan.Planned>().OrderBy(plan => plan.Times.OffBlocks).ThenBy(plan => plan.Key).ToImmutableArray();
        return new CrewWeek
        {
            Code = code,
            Steps = Chain.Of(plans, member?.Base ?? ""),
            Duties = Duties(planned, logged, report, release),
            FlightTime = FlightTime(planned),
        };
    }

    private static ImmutableArray<DutyDay> Duties(ImmutableArray<LegPlan.Planned> planned, IEnumerable<LoggedDuty> logged, Duration report, Duration release)
    {
        var duties = ImmutableArray.CreateBuilder<DutyDay>();
        var lastRelease = planned.IsEmpty ? null : logged.Where(duty => duty.DutyOff < planned[0].Times.OffBlocks).Max(duty => duty.DutyOff);
        var start = 0;
        for (var next = 1; next <= planned.Length; next++)
        {
            // Legs that overlap, a fault that a check names, are one duty until the last of them is over.
            var legs = planned[start..next];
            var over = legs.Max(plan => plan.Times.OnBlocks) + release;
            var isLast = next == planned.Length;
            if (!isLast && planned[next].Times.OffBlocks - report - over < Rest) continue;
            var duty = new DutyDay
            {
                Report = legs[0].Times.OffBlocks - report,
                Release = over,
                Legs = [.. legs.Select(plan => plan.Key)],
                FlightTime = FlightTime(legs),
                NightLandings = legs.Count(plan => plan.Daylight.IsNightLanding),
                RestBefore = legs[0].Times.OffBlocks - report - lastRelease,
            };
            duties.Add(duty);
            lastRelease = duty.Release;
            start = next;
        }

        return duties.DrainToImmutable();
    }

    private static Duration FlightTime(IEnumerable<LegPlan.Planned> plans) => plans.Aggregate(Duration.Zero, (sum, plan) => sum + plan.Times.Block);

    /// <summary>The codes of the persons who fly a leg, captain first.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<string> Codes(LegPlan plan)
    {
        var (captain, second) = plan switch
        {
            LegPlan.Planned planned => (planned.Leg.Captain, planned.Leg.SecondPilot),
            LegPlan.Unplanned { Leg: { } leg } => (leg.Captain, leg.SecondPilot),
            LegPlan.Unplanned { Broken: { } broken } => (broken.Captain, broken.SecondPilot),
            _ => ("", ""),
        };
        if (captain.Length > 0) yield return captain;
        if (second.Length > 0 && !string.Equals(second, captain, StringComparison.OrdinalIgnoreCase)) yield return second;
    }

    /// <summary>The registration of a leg; empty where it could not be read.</summary>
    /// <param name="plan">The leg.</param>
    public static string Registration(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => planned.Leg.Aircraft,
        LegPlan.Unplanned unplanned => unplanned.Leg?.Aircraft ?? unplanned.Broken?.Aircraft ?? "",
        _ => "",
    };
}
