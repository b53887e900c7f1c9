using System.Globalization;
using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>What is written into a cell. Text is written as text, so that nothing in it can become a formula.</summary>
internal readonly record struct CellValue
{
    private readonly string? _text;
    private readonly double? _number;

    private CellValue(string? text, double? number) => (_text, _number) = (text, number);

    /// <summary>Nothing but a style.</summary>
    public static CellValue Empty { get; }

    /// <summary>Text; nothing where it is empty.</summary>
    public static CellValue Of(string text) => text.Length == 0 ? Empty : new CellValue(Shortened(text), null);

    /// <summary>A number; nothing where there is none or it is not finite.</summary>
    public static CellValue Of(double? number) => number is { } finite && double.IsFinite(finite) ? new CellValue(null, finite) : Empty;

    /// <summary>The cell as it stands in a sheet.</summary>
    /// <param name="prefix">Prefix of the sheet's names.</param>
    /// <param name="reference">Such as <c>F7</c>.</param>
    /// <param name="style">Style index.</param>
    public string Xml(string prefix, string reference, int style)
    {
        var head = $"<{prefix}c r=\"{reference}\" s=\"{style.ToString(CultureInfo.InvariantCulture)}\"";
        if (_number is { } number) return $"{head}><{prefix}v>{number.ToString("R", CultureInfo.InvariantCulture)}</{prefix}v></{prefix}c>";
        return _text is { } text
            ? $"{head} t=\"inlineStr\"><{prefix}is><{prefix}t xml:space=\"preserve\">{XmlPart.Escaped(text)}</{prefix}t></{prefix}is></{prefix}c>"
            : head + "/>";
    }

    /// <summary>The value as a csv file has it.</summary>
    /// <param name="decimalComma">Whether the file writes numbers with a decimal comma.</param>
    public string Plain(bool decimalComma) =>
        _number is { } number
            ? decimalComma ? number.ToString("R", CultureInfo.InvariantCulture).Replace('.', ',') : number.ToString("R", CultureInfo.InvariantCulture)
            : _text ?? "";

    // A spreadsheet program refuses a file with a longer text in a cell.
    private static string Shortened(string text)
    {
        const int Most = 32_000;
        return text.Length <= Most ? text : text[..(char.IsHighSurrogate(text[Most - 1]) ? Most - 1 : Most)] + "...";
    }
}
