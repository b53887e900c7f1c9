namespace Batch.Sheets;

/// <summary>The text of a mail, or what is wrong in its templates.</summary>
public sealed record RenderedMail
{
    /// <summary>Subject: one line without control characters.</summary>
    public required string Subject { get; init; }

    /// <summary>The body as HTML.</summary>
    public required string Html { get; init; }

    /// <summary>The body as plain text, lines ended by a line feed.</summary>
    public required string Text { get; init; }

    /// <summary>What is wrong in the templates; empty for a mail that can be sent.</summary>
    public ImmutableArray<TemplateProblem> Problems { get; init; } = [];

    /// <summary>Whether it can be sent.</summary>
    public bool IsRendered => Problems.IsEmpty;
}
