using Batch.Flight.Plan;

namespace Batch.Sheets.Views;

/// <summary>Who flies a leg, planned or not, by code as the book has it.</summary>
internal static class Seats
{
    /// <summary>The captain's code, then the second pilot's; each once.</summary>
    public static IEnumerable<string> Of(LegPlan plan)
    {
        var (captain, second) = (Captain(plan), Second(plan));
        if (captain.Length > 0) yield return captain;
        if (second.Length > 0 && !Same(second, captain)) yield return second;
    }

    public static bool Has(LegPlan plan, string code) => Of(plan).Any(seat => Same(seat, code));

    /// <summary>Such as <c>captain</c>.</summary>
    public static string Named(LegPlan plan, string code) => Same(Captain(plan), code) ? "captain" : "second pilot";

    /// <summary>Off blocks where it could be read.</summary>
    public static Instant? OffBlocks(LegPlan plan) => plan is LegPlan.Planned planned ? planned.Times.OffBlocks : LegView.Names(plan).Read?.OffBlocks;

    public static bool Same(string code, string other) => string.Equals(code, other, StringComparison.OrdinalIgnoreCase);

    private static string Captain(LegPlan plan) => LegView.Names(plan) is var (read, broken) ? read?.Captain ?? broken?.Captain ?? "" : "";

    private static string Second(LegPlan plan) => LegView.Names(plan) is var (read, broken) ? read?.SecondPilot ?? broken?.SecondPilot ?? "" : "";
}
