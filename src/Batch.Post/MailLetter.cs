namespace Batch.Post;

/// <summary>A mail to one person, rendered. Private.</summary>
public sealed record MailLetter
{
    /// <summary>Name of the sender; may be empty.</summary>
    public string FromName { get; init; } = "";

    /// <summary>Address of the sender.</summary>
    public required string From { get; init; }

    /// <summary>Name of the person; may be empty.</summary>
    public string ToName { get; init; } = "";

    /// <summary>Address of the person.</summary>
    public required string To { get; init; }

    /// <summary>Subject.</summary>
    public required string Subject { get; init; }

    /// <summary>Body as plain text.</summary>
    public required string Text { get; init; }

    /// <summary>Body as HTML.</summary>
    public required string Html { get; init; }

    /// <summary>Files attached.</summary>
    public ImmutableArray<MailAttachment> Attachments { get; init; } = [];

    /// <summary>Message-ID without angle brackets.</summary>
    public required string MessageId { get; init; }

    /// <summary>Date of the mail.</summary>
    public required Instant At { get; init; }
}
