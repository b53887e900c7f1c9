namespace Batch.Sheets.Templates;

/// <summary>Text that is HTML already and is written as it stands: a picture, an included partial, a value marked <c>raw</c>.</summary>
/// <param name="Html">The markup.</param>
internal sealed record Markup(string Html)
{
    /// <summary>Whether it is a picture.</summary>
    public bool IsPicture => Html.StartsWith("<svg", StringComparison.Ordinal);

    public override string ToString() => Html;

    /// <summary>A text with the five characters that mean something in HTML replaced; fit for element content and quoted attributes.</summary>
    /// <param name="text">The text.</param>
    public static string Escaped(string text) => text.AsSpan().IndexOfAny("&<>\"'") < 0 ? text : text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal)
        .Replace("'", "&#39;", StringComparison.Ordinal);
}
