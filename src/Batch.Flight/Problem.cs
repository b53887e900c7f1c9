namespace Batch.Flight;

/// <summary>A complaint about the input, at its cell.</summary>
public sealed record Problem
{
    /// <summary>How serious: a note loses nothing, a caution names a choice that was made, a fail costs the row or what depends on it.</summary>
    public required State State { get; init; }

    /// <summary>The cell or row, such as <c>week.xlsx/Legs/F7</c>.</summary>
    public required string Cell { get; init; }

    /// <summary>One sentence for the person at the spreadsheet: what is wrong and what to do. Names no person.</summary>
    public required string Text { get; init; }

    /// <summary>What was read, raw; empty for an empty cell.</summary>
    public string Read { get; init; } = "";

    /// <summary>What would have been understood, with the nearest valid value where there is one.</summary>
    public string Expected { get; init; } = "";
}
