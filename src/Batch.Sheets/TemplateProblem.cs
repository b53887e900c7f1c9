namespace Batch.Sheets;

/// <summary>What is wrong in a template, at its place.</summary>
/// <param name="File">Name of the template or partial, such as <c>trip-sheet.html</c>.</param>
/// <param name="Line">Line, 1 for the first; 0 where the file as a whole is meant.</param>
/// <param name="Column">Column, 1 for the first; 0 where the line or the file as a whole is meant.</param>
/// <param name="Text">What is wrong, with the nearest valid name where there is one.</param>
/// <param name="Near">The nearest valid name; empty where there is none near.</param>
public sealed record TemplateProblem(string File, int Line, int Column, string Text, string Near)
{
    /// <summary>Such as <c>trip-sheet.html(12,5): leg.fuel has no value trp; did you mean trip?</c></summary>
    public override string ToString() => Line == 0
        ? $"{File}: {Text}"
        : Column == 0
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{File}({Line}): {Text}")
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{File}({Line},{Column}): {Text}");
}
