using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A complaint about the books, as printed.</summary>
internal sealed record ProblemView
{
    [Value("State")]
    public required StateView State { get; init; }

    [Value("Cell or row, such as week.xlsx/Legs/F7")]
    public required string Cell { get; init; }

    [Value("What is wrong and what to do")]
    public required string Text { get; init; }

    [Value("What was read")]
    public required string Read { get; init; }

    [Value("What would have been understood")]
    public required string Expected { get; init; }

    public static ProblemView Of(Problem problem) => new()
    {
        State = StateView.Of(problem.State),
        Cell = problem.Cell,
        Text = problem.Text,
        Read = problem.Read,
        Expected = problem.Expected,
    };
}
