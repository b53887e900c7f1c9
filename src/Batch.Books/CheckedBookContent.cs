namespace Batch.Books;

/// <summary>What goes into checked workbooks.</summary>
public sealed record CheckedBookContent
{
    /// <summary>Lines of the sheet of findings, in the order in which they are to stand.</summary>
    public required ImmutableArray<CheckedLine> Lines { get; init; }

    /// <summary>All legs, in any order; they say which books are week books.</summary>
    public required ImmutableArray<LegResult> Legs { get; init; }

    /// <summary>Whether time, fuel, weight and state are written beside each leg.</summary>
    public bool HasResultColumns { get; init; }

    /// <summary>The unit of the weights beside the legs.</summary>
    public WeightUnit WeightUnit { get; init; } = WeightUnit.Pounds;

    /// <summary>What stands under the title of the sheet of findings: counts, rule set, when it was made.</summary>
    public required string Summary { get; init; }
}
