using Batch.Flight.Plan;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>Why a leg could not be planned.</summary>
internal sealed record UnplannedView
{
    [Value("Why, one sentence")]
    public required string Why { get; init; }

    [Value("Where on the route; nothing where it has no place")]
    public required string Where { get; init; }

    [Value("Cells that hold what is wrong")]
    public required ImmutableArray<string> Cells { get; init; }

    [Value("What would do")]
    public required string Expected { get; init; }

    [Value("Whether the reason is a fault of the program, not of the books")]
    public required bool IsFault { get; init; }

    public static UnplannedView Of(LegPlan.Unplanned plan) => new()
    {
        Why = plan.Why,
        Where = plan.Where,
        Cells = plan.Cells,
        Expected = plan.Expected,
        IsFault = plan.IsFault,
    };
}
