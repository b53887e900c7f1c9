using System.Collections.Concurrent;
using Batch.Paper;

namespace Batch.Cli.Pipeline;

/// <summary>Gathers what the paper engine did not honour, each once, from sheets printed at the same time.</summary>
internal sealed class PaperNotes
{
    private readonly ConcurrentDictionary<string, byte> _texts = new(StringComparer.Ordinal);

    /// <summary>The notes, in order.</summary>
    public ImmutableArray<string> All => [.. _texts.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Adds what one document did not get.</summary>
    /// <param name="unsupported">The notes.</param>
    public void Add(ImmutableArray<Unsupported> unsupported)
    {
        foreach (var note in unsupported) _texts.TryAdd(note.Text, 0);
    }
}
