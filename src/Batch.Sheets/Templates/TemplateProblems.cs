using System.Globalization;
using Scriban;
using Scriban.Parsing;
using Scriban.Syntax;

namespace Batch.Sheets.Templates;

/// <summary>Turns what the template engine reports into problems with a place.</summary>
internal static class TemplateProblems
{
    public static IEnumerable<TemplateProblem> Of(Template template) =>
        template.Messages.Where(message => message.Type == ParserMessageType.Error).Select(message => At(message.Span, message.Message, ""));

    public static TemplateProblem Of(ValueError wrong) => At(wrong.Span, wrong.OriginalMessage, wrong.Near);

    public static TemplateProblem Of(ScriptRuntimeException wrong, TemplateBounds bounds) => wrong switch
    {
        ValueError value => Of(value),
        ScriptAbortException => At(wrong.Span,
            $"The sheet took longer than {bounds.Time.TotalSeconds.ToString("0.#", CultureInfo.InvariantCulture)} seconds and was stopped here.", ""),
        { InnerException: ValueError inner } => Of(inner),
        _ => At(wrong.Span, InPlainWords(wrong.OriginalMessage), ""),
    };

    /// <summary>
    /// What the engine says of a part of nothing, <c>Object `leg.plan` is null. Cannot access member: leg.plan.fuel</c>, for somebody who writes templates and
    /// no programs.
    /// </summary>
    private static string InPlainWords(string message)
    {
        var nullAt = message.IndexOf("` is null. Cannot access ", StringComparison.Ordinal);
        var colon = nullAt < 0 ? -1 : message.IndexOf(": ", nullAt, StringComparison.Ordinal);
        if (colon < 0 || !message.StartsWith("Object `", StringComparison.Ordinal))
            return message;
        var nothing = message["Object `".Length..nullAt];
        return $"There is no `{nothing}` here, so `{message[(colon + 2)..].TrimEnd('.')}` cannot be written; write `{{{{ if {nothing} }}}}` before it and `{{{{ end }}}}` after it.";
    }

    private static TemplateProblem At(SourceSpan span, string text, string near) =>
        new(span.FileName ?? "", span.Start.Line + 1, span.Start.Column + 1, text, near);
}
