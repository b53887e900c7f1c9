namespace Batch.Post;

/// <summary>What a calendar file asks the reader to do (RFC 5546).</summary>
public enum CalendarMethod
{
    /// <summary>Put the events in, or bring them up to date.</summary>
    Publish,

    /// <summary>Take the events out.</summary>
    Cancel,
}
