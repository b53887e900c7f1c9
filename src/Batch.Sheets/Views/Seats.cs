using Batch.Flight.Plan;

namespace Batch.Sheets.Views;

/// <summary>Who flies a leg, planned or not, by code as the book has it.</summary>
internal static class Seats
{
    public static bool Has(LegPlan plan, string code) => LegPeople.Crew(plan).Any(seat => Same(seat, code));

    /// <summary>Such as <c>captain</c>.</summary>
    public static string Named(LegPlan plan, string code) => Same(Captain(plan), code) ? "captain" : "second pilot";

    /// <summary>Off blocks where it could be read.</summary>
    public static Instant? OffBlocks(LegPlan plan) => plan is LegPlan.Planned planned ? planned.Times.OffBlocks : LegView.Names(plan).Read?.OffBlocks;

    public static bool Same(string code, string other) => string.Equals(code, other, StringComparison.OrdinalIgnoreCase);

    private static string Captain(LegPlan plan) => LegView.Names(plan) is var (read, broken) ? read?.Captain ?? broken?.Captain ?? "" : "";
}
