using Batch.Paper.Paint;

namespace Batch.Paper.Tests;

/// <summary>Small documents as they are painted.</summary>
internal static class Print
{
    /// <summary>A document on a page of 100 by 60 mm with margins of 5 mm (content 340.16 by 188.98 px) and lines of 20 px.</summary>
    public static string Small(string body, string style = "") =>
        "<!DOCTYPE html>\n<html lang=\"en\"><head><title>Small</title><style>@page { size: 100mm 60mm; margin: 5mm }"
        + " body { margin: 0; font-size: 10pt; line-height: 20px } p, table, ul, ol { margin: 0 } table { border-collapse: collapse } td, th { padding: 0 4px; text-align: left }"
        + style + "</style></head><body>\n" + body + "</body></html>";

    public static List<List<DisplayItem>> Painted(string html) => Printed.Printer.Painted(html, new PrintOptions()).Pages;

    /// <summary>A template once for each number, which stands where it has a `#`.</summary>
    public static string Each(int from, int count, string template) =>
        string.Concat(Enumerable.Range(from, count).Select(i => template.Replace("#", Number(i), StringComparison.Ordinal)));

    public static string Number(int value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The painted texts with their page, from 0, and place, px, in the order of painting.</summary>
    public static List<(int Page, double X, double Y, string Text)> Texts(string html) =>
        [.. Painted(html).SelectMany((items, page) => items.OfType<DisplayItem.Text>().Select(t => (page, t.Place.E, t.Place.F, string.Concat(t.Texts))))];

    /// <summary>The page, from 0, a whole text is painted on; fails when it is painted not once.</summary>
    public static int PageOf(string html, string text) => Assert.Single(Texts(html), t => t.Text.TrimEnd() == text).Page;
}
