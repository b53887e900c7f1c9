using System.Collections.Frozen;

namespace Batch.Cli.Watching;

/// <summary>What the browser is given: the files of the last good run, and what went wrong since.</summary>
/// <param name="Number">Counts up; a page of another number reloads itself.</param>
/// <param name="Files">The files by name inside the output folder; none before the first good run.</param>
/// <param name="Trouble">Why the books or templates as they stand could not be used; empty where they could.</param>
internal sealed record ServedRun(int Number, FrozenDictionary<string, byte[]> Files, string Trouble)
{
    /// <summary>Nothing yet.</summary>
    public static ServedRun None { get; } = new(0, FrozenDictionary<string, byte[]>.Empty, "");
}
