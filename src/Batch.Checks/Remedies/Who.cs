using Batch.Flight.Plan;

namespace Batch.Checks.Remedies;

/// <summary>The aircraft and the pilots of a leg, planned or not.</summary>
internal static class Who
{
    /// <summary>Registration; empty where not known.</summary>
    /// <param name="plan">The leg.</param>
    public static string Aircraft(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => planned.Leg.Aircraft,
        LegPlan.Unplanned unplanned => unplanned.Leg?.Aircraft ?? unplanned.Broken?.Aircraft ?? "",
        _ => "",
    };

    /// <summary>Codes of the pilots.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<string> Pilots(LegPlan plan)
    {
        var (captain, second) = plan switch
        {
            LegPlan.Planned planned => (planned.Leg.Captain, planned.Leg.SecondPilot),
            LegPlan.Unplanned unplanned =>
                (unplanned.Leg?.Captain ?? unplanned.Broken?.Captain ?? "", unplanned.Leg?.SecondPilot ?? unplanned.Broken?.SecondPilot ?? ""),
            _ => ("", ""),
        };
        return new[] { captain, second }.Where(code => code.Length > 0);
    }
}
