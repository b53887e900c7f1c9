namespace Batch.Post;

/// <summary>One event of a calendar file.</summary>
public sealed record CalendarEvent
{
    /// <summary>Name of the event for ever, the same in every file that speaks of it.</summary>
    public required string Uid { get; init; }

    /// <summary>How often the event has changed since it was first given out, 0 or more.</summary>
    public required int Sequence { get; init; }

    /// <summary>Start, in the time zone of its place.</summary>
    public required ZonedDateTime Start { get; init; }

    /// <summary>End, in the time zone of its place; not before <see cref="Start"/>.</summary>
    public required ZonedDateTime End { get; init; }

    /// <summary>One line.</summary>
    public required string Summary { get; init; }

    /// <summary>Place; empty for none.</summary>
    public string Location { get; init; } = "";

    /// <summary>Text of some lines; empty for none.</summary>
    public string Description { get; init; } = "";

    /// <summary>Whether the event is off.</summary>
    public bool IsCancelled { get; init; }
}
