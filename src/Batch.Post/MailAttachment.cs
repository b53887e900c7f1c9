namespace Batch.Post;

/// <summary>A file attached to a mail.</summary>
/// <param name="Name">Name as the person sees it, letters of ASCII.</param>
/// <param name="Type">Media type with its parameters, such as <c>application/pdf</c>.</param>
/// <param name="Content">Content.</param>
public sealed record MailAttachment(string Name, string Type, byte[] Content)
{
    /// <summary>A PDF.</summary>
    /// <param name="name">Name as the person sees it.</param>
    /// <param name="content">Content.</param>
    public static MailAttachment Pdf(string name, byte[] content) => new(name, "application/pdf", content);

    /// <summary>A calendar file.</summary>
    /// <param name="name">Name as the person sees it.</param>
    /// <param name="method">What it asks the reader to do.</param>
    /// <param name="content">Content.</param>
    public static MailAttachment Calendar(string name, CalendarMethod method, byte[] content) =>
        new(name, $"text/calendar; charset=utf-8; method={(method == CalendarMethod.Cancel ? "CANCEL" : "PUBLISH")}", content);
}
