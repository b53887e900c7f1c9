using Scriban.Parsing;
using Scriban.Syntax;

namespace Batch.Sheets.Templates;

/// <summary>A value that a template uses wrongly, with the nearest valid name.</summary>
internal sealed class ValueError(SourceSpan span, string text, string near = "") : ScriptRuntimeException(span, text)
{
    public string Near { get; } = near;

    /// <summary>A name that does not exist.</summary>
    /// <param name="span">Where.</param>
    /// <param name="statement">Such as <c>leg.fuel has no value `trp`</c>.</param>
    /// <param name="written">The name as written.</param>
    /// <param name="valid">The names that exist.</param>
    public static ValueError Unknown(SourceSpan span, string statement, string written, IReadOnlyCollection<string> valid)
    {
        var near = NearWords.Nearest(written, valid, 1) is [var nearest, ..] ? nearest : "";
        return new ValueError(span, near.Length > 0 ? $"{statement}; did you mean `{near}`?" : $"{statement}.", near);
    }
}
