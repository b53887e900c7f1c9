using Batch.Checks;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What a sheet says about the run.</summary>
internal sealed record RunView
{
    [Value("When the run was made; its local time is UTC")]
    public required ClockTime MadeAt { get; init; }

    [Value("Version of the program")]
    public required string ToolVersion { get; init; }

    [Value("Name of the rule set with its date")]
    public required string RuleSet { get; init; }

    [Value("The books that were read")]
    public required ImmutableArray<BookView> Books { get; init; }

    public static RunView Of(CheckedWeek week, RunFacts facts) => new()
    {
        MadeAt = new ClockTime(facts.MadeAt, DateTimeZone.Utc),
        ToolVersion = facts.ToolVersion,
        RuleSet = week.RuleSet,
        Books = [.. week.Plan.Input.Inputs.Select(BookView.Of)],
    };
}
