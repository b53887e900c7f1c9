namespace Batch.Books;

/// <summary>One line of the sheet of findings in a checked workbook: what was found, at which cells, and what would help.</summary>
public sealed record CheckedLine
{
    /// <summary>How serious it is; fails and cautions mark their cells.</summary>
    public required State State { get; init; }

    /// <summary>What is said instead of the word for <see cref="State"/>, such as <c>not checked</c>; empty for that word.</summary>
    public string Word { get; init; } = "";

    /// <summary>The leg, such as <c>T101/2</c>; empty for a complaint about a cell.</summary>
    public string Leg { get; init; } = "";

    /// <summary>Local day of departure; null where not known or not of a leg.</summary>
    public LocalDate? Day { get; init; }

    /// <summary>Registration; empty where not of a leg.</summary>
    public string Aircraft { get; init; } = "";

    /// <summary>Id and title of the check, such as <c>FUEL-03 Final reserve</c>; empty for a complaint about a cell.</summary>
    public string Check { get; init; } = "";

    /// <summary>What was found, one sentence.</summary>
    public required string Text { get; init; }

    /// <summary>What is required, in <see cref="Unit"/>; null where it is not a number.</summary>
    public double? Required { get; init; }

    /// <summary>What is planned, in <see cref="Unit"/>; null where it is not a number.</summary>
    public double? Actual { get; init; }

    /// <summary>Unit of the numbers.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What would make it pass, least disruptive first; of a complaint what would be understood.</summary>
    public ImmutableArray<string> Remedies { get; init; } = [];

    /// <summary>Document and paragraph.</summary>
    public string Citation { get; init; } = "";

    /// <summary>Who can act.</summary>
    public string Actor { get; init; } = "";

    /// <summary>The cells, such as <c>week.xlsx/Legs/F7</c>.</summary>
    public ImmutableArray<string> Cells { get; init; } = [];

    /// <summary>The cell of the leg that is marked where none of <see cref="Cells"/> stands in the same book; empty where not of a leg.</summary>
    public string LegCell { get; init; } = "";
}
