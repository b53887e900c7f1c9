using System.CommandLine;
using Batch.Cli.Pipeline;
using NodaTime.Text;

namespace Batch.Cli.Commands;

/// <summary>Arguments and options that several commands have.</summary>
internal static class SharedArguments
{
    private static readonly InstantPattern ToTheMinute = InstantPattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm'Z'");

    /// <summary>The books.</summary>
    public static Argument<string[]> Books() => new("BOOK")
    {
        Description = "A workbook (.xlsx) or a folder: the workbooks that stand in it, or, where there are none, its .csv files.",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>The ledger of what was issued.</summary>
    public static Option<string?> Ledger() => new("--ledger")
    {
        Description = "File that keeps what was issued to whom; usually the one beside the folder of the run, such as out-issued.jsonl.",
        HelpName = "FILE",
    };

    /// <summary>How many at once.</summary>
    public static Option<int> Jobs() => new("--jobs")
    {
        Description = "How many legs and sheets are worked on at once; the result does not depend on it.",
        HelpName = "N",
        DefaultValueFactory = _ => Environment.ProcessorCount,
    };

    /// <summary>The names of a list; none where the option was not given.</summary>
    /// <param name="list">Names separated by commas; null where the option was not given.</param>
    public static string[] Names(string? list) => (list ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>A day in ISO form.</summary>
    /// <param name="option">Option name for the complaint.</param>
    /// <param name="text">Text; null where the option was not given.</param>
    /// <exception cref="InputException">The text is not a day.</exception>
    public static LocalDate? Day(string option, string? text)
    {
        if (text is null) return null;
        var parsed = LocalDatePattern.Iso.Parse(text);
        return parsed.Success ? parsed.Value : throw new InputException($"{option} {text}: a day such as 2026-12-07 was expected.");
    }

    /// <summary>An instant in ISO form; the clock's where none is given.</summary>
    /// <param name="text">Text; null where the option was not given.</param>
    /// <exception cref="InputException">The text is not an instant.</exception>
    public static Instant MadeAt(string? text)
    {
        if (text is null) return Instant.FromUnixTimeSeconds(SystemClock.Instance.GetCurrentInstant().ToUnixTimeSeconds());
        var parsed = InstantPattern.ExtendedIso.Parse(text);
        if (!parsed.Success) parsed = ToTheMinute.Parse(text);
        return parsed.Success ? parsed.Value : throw new InputException($"--made-at {text}: an instant such as 2026-12-03T15:00:00Z was expected.");
    }

    /// <summary>The number of jobs, held to at least one.</summary>
    /// <param name="jobs">As given.</param>
    /// <exception cref="InputException">Less than one.</exception>
    public static int CheckedJobs(int jobs) => jobs >= 1
        ? jobs
        : throw new InputException(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"--jobs {jobs}: 1 or more was expected."));
}
