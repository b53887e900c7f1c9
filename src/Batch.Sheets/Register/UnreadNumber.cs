using System.Diagnostics;
using System.Globalization;
using Batch.Flight.Plan;

namespace Batch.Sheets.Register;

/// <summary>What stands for a leg number that could not be read: the row of the Legs sheet.</summary>
internal static class UnreadNumber
{
    /// <summary>The row where the leg number could not be read; 0 where it could.</summary>
    /// <param name="plan">The leg.</param>
    public static int Row(LegPlan plan) => plan.Key.Number > 0 ? 0 : plan.Key.Row > 0 ? plan.Key.Row : OriginOf(plan).Row;

    /// <summary>The number, or <c>row 5</c>; empty where neither is known.</summary>
    /// <param name="number">Leg number; 0 where it could not be read.</param>
    /// <param name="row">Row; 0 where none is known.</param>
    public static string Word(int number, int row) =>
        number > 0 ? number.ToString(CultureInfo.InvariantCulture)
        : row > 0 ? "row " + row.ToString(CultureInfo.InvariantCulture)
        : "";

    private static Origin OriginOf(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => planned.Leg.Origin,
        LegPlan.Unplanned unplanned => unplanned.Leg?.Origin ?? unplanned.Broken?.Origin ?? Origin.None,
        _ => throw new UnreachableException(),
    };
}
