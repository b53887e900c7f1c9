using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Batch.Paper.Tests;

/// <summary>Prints with one shared printer and reads the PDF back with PdfPig, which is not the library that wrote it.</summary>
internal static class Printed
{
    public static readonly PdfPrinter Printer = new();

    public static PrintedDocument Print(string html, PrintOptions? options = null) => Printer.Print(html, options ?? new PrintOptions());

    /// <summary>What is painted for a document, as text.</summary>
    public static string DisplayList(string html, PrintOptions? options = null) =>
        DisplayListText.Of(Printer.Painted(html, options ?? new PrintOptions()).Pages);

    public static string Page(string style, string body) =>
        "<!DOCTYPE html>\n<html lang=\"en\"><head><title>Test</title><style>" + style + "</style></head><body>" + body + "</body></html>";

    public static PdfDocument Read(PrintedDocument printed) => PdfDocument.Open(printed.Pdf);

    /// <summary>Words of each page in the order they were written.</summary>
    public static List<List<string>> Words(PrintedDocument printed)
    {
        using var pdf = Read(printed);
        return [.. pdf.GetPages().Select(p => Words(p).ToList())];
    }

    public static string Text(PrintedDocument printed) => string.Join(' ', Words(printed).SelectMany(w => w));

    public static List<string> Words(Page page)
    {
        var words = new List<string>();
        Letter? last = null;
        foreach (var letter in page.Letters)
        {
            var parted = last is null
                || Math.Abs(letter.StartBaseLine.Y - last.StartBaseLine.Y) > 0.5
                || letter.StartBaseLine.X - last.EndBaseLine.X > 1
                || letter.StartBaseLine.X < last.StartBaseLine.X;
            if (letter.Value is " " or "\u00A0")
            {
                last = null;
                continue;
            }

            if (parted) words.Add("");
            words[^1] += letter.Value;
            last = letter;
        }

        return words;
    }
}
