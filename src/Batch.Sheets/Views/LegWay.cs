using Batch.Flight.Plan;

namespace Batch.Sheets.Views;

/// <summary>Where a leg goes, planned or not.</summary>
internal static class LegWay
{
    /// <summary>Such as <c>XAND–XBEL</c>; a place that could not be read is a question mark.</summary>
    public static string Of(LegPlan plan) => From(plan) + "–" + To(plan);

    /// <summary>Such as <c>T101/1</c>; with its row in the book where the number could not be read.</summary>
    public static string Key(LegPlan plan) => plan.Key.ToString();

    /// <summary>The name of its place on the board, such as <c>leg=T101/1</c>; it holds no blank whatever the trip is called.</summary>
    public static string Anchor(LegPlan plan) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"leg={SheetName.Of(plan.Key.Trip)}/{plan.Key.Number}")
            + (plan.Key.Row > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"-row-{plan.Key.Row}") : "");

    public static string From(LegPlan plan) => Known(plan switch
    {
        LegPlan.Planned planned => planned.Leg.From,
        LegPlan.Unplanned unplanned => unplanned.Leg?.From ?? unplanned.Broken?.From,
        _ => null,
    });

    public static string To(LegPlan plan) => Known(plan switch
    {
        LegPlan.Planned planned => planned.Leg.To,
        LegPlan.Unplanned unplanned => unplanned.Leg?.To ?? unplanned.Broken?.To,
        _ => null,
    });

    private static string Known(string? ident) => string.IsNullOrEmpty(ident) ? "?" : ident;
}
