namespace Batch.Sheets;

/// <summary>Writes the mail that carries a packet: <c>mail.txt</c> with the subject in its first line, and <c>mail.html</c>.</summary>
public static class MailBody
{
    private const string SubjectMark = "Subject:";

    /// <summary>
    /// Renders subject and both bodies. Values are escaped in the HTML; in the text each stands on one line, so that no cell can add a line or a header.
    /// </summary>
    /// <param name="renderer">The templates.</param>
    /// <param name="letter">What the mail says.</param>
    /// <returns>The mail, or what is wrong in its templates.</returns>
    public static RenderedMail Render(SheetRenderer renderer, CrewLetter letter)
    {
        ArgumentNullException.ThrowIfNull(renderer);
        var model = SheetModels.Mail(letter);
        var html = renderer.Render(SheetModels.MailHtml, model);
        var text = renderer.Render(SheetModels.MailText, model);
        ImmutableArray<TemplateProblem> problems = [.. html.Problems, .. text.Problems];
        if (!problems.IsEmpty) return Failed(problems);
        var end = text.Html.IndexOf('\n', StringComparison.Ordinal);
        var first = (end < 0 ? text.Html : text.Html[..end]).Trim();
        var subject = first.StartsWith(SubjectMark, StringComparison.OrdinalIgnoreCase) ? first[SubjectMark.Length..].Trim() : "";
        if (subject.Length == 0)
            return Failed(
                [new TemplateProblem(SheetModels.MailText, 1, 1, $"The first line must give the subject, such as `{SubjectMark} Your flights`.", "")]);
        return new RenderedMail { Subject = subject, Html = html.Html, Text = end < 0 ? "" : text.Html[(end + 1)..].TrimStart('\n') };
    }

    private static RenderedMail Failed(ImmutableArray<TemplateProblem> problems) => new() { Subject = "", Html = "", Text = "", Problems = problems };
}
