using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>What a run was asked to do.</summary>
public sealed record RunOptions
{
    /// <summary>Books: workbooks and folders.</summary>
    public required ImmutableArray<string> Books { get; init; }

    /// <summary>Folder that receives the outputs.</summary>
    public string Out { get; init; } = "out";

    /// <summary>Ledger of what was issued; null for the one beside <see cref="Out"/>.</summary>
    public string? Ledger { get; init; }

    /// <summary>Folder with the user's templates; null for the shipped ones.</summary>
    public string? Templates { get; init; }

    /// <summary>Trips to write, case ignored; empty for all.</summary>
    public ImmutableHashSet<string> Only { get; init => field = value.WithComparer(StringComparer.OrdinalIgnoreCase); } = [];

    /// <summary>First local day of departure to write; null for all.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Last local day of departure to write; null for all.</summary>
    public LocalDate? To { get; init; }

    /// <summary>
    /// Why legs are flown although they fail, by leg as written on the command line, such as <c>T101/2</c>; each replaces what the book says.
    /// </summary>
    public ImmutableSortedDictionary<string, string> Overrides { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Whether sheets are printed to PDF.</summary>
    public bool MakesPdf { get; init; } = true;

    /// <summary>Whether the checked workbook has time, fuel, weight and state beside each leg.</summary>
    public bool HasResultColumns { get; init; }

    /// <summary>Paper of the sheets.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>How many legs or sheets are worked on at once, 1 or more.</summary>
    public int Jobs { get; init; } = 1;

    /// <summary>The sheets of the run before; null to make every sheet anew.</summary>
    public SheetMemo? Memo { get; init; }

    /// <summary>The week of the run before; null to plan everything anew.</summary>
    public WeekMemo? WeekMemo { get; init; }

    /// <summary>The instant printed as "made at".</summary>
    public required Instant MadeAt { get; init; }
}
