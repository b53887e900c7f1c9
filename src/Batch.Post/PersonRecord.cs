namespace Batch.Post;

/// <summary>A person of a run.</summary>
public sealed record PersonRecord
{
    /// <summary>Code.</summary>
    public required string Code { get; init; }

    /// <summary>Name; empty where the code is not in the Crew sheet. Private.</summary>
    public string Name { get; init; } = "";

    /// <summary>Mail address; empty where the Crew sheet gives none. Private.</summary>
    public string Mail { get; init; } = "";

    /// <summary>When the person reports for a duty, by its first leg, such as <c>T101/1</c>.</summary>
    public ImmutableDictionary<string, Instant> Reports { get; init; } = ImmutableDictionary<string, Instant>.Empty;
}
