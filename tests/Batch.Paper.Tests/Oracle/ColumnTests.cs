using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Batch.Paper.Boxes;
using Xunit.Abstractions;

namespace Batch.Paper.Tests.Oracle;

/// <summary>
/// Left and right edge of every table cell, as the printer lays it out and as Chromium does in a column of the same width, under the rules for print.
/// </summary>
public sealed class ColumnTests(ITestOutputHelper output)
{
    private const double PixelsAPoint = 96.0 / 72;

    private const string Script = """
        <script>document.fonts.ready.then(() => {
          const cells = document.createElement('pre');
          cells.textContent = [...document.querySelectorAll('td,th')].map(c => c.getBoundingClientRect()).map(b => `cell ${b.left.toFixed(3)} ${b.right.toFixed(3)}`).join('\n');
          document.body.append(cells);
        });</script>
        """;

    [SkippableTheory]
    [InlineData("Batch.Paper.Tests/Specimen/specimen.html")]
    [InlineData("Batch.Paper.Tests/Specimen/chips-and-tables.html")]
    [InlineData("Batch.Sheets.Tests/Golden/T101.html")]
    [InlineData("Batch.Sheets.Tests/Golden/T101-metric.html")]
    [InlineData("Batch.Sheets.Tests/Golden/T101-german.html")]
    [InlineData("Batch.Sheets.Tests/Golden/packet-ANA.html")]
    [InlineData("Batch.Sheets.Tests/Golden/loads-XAND.html")]
    [InlineData("Batch.Sheets.Tests/Golden/values.html")]
    public void Columns_lie_within_two_points_of_the_browsers(string name) => ExternalTool.InFolder(folder =>
    {
        Skip.If(Browser.Program is null, "chromium is not installed");
        var html = Browser.Document(name);
        var (reader, setup, column, _) = Printed.Printer.Painted(html, new PrintOptions());
        var ours = new Dictionary<IElement, (double Left, double Right)>();
        Collect(column, 0, ours);
        var print = html.Replace("@media screen", "@media speech", StringComparison.Ordinal).Replace("@media print", "@media all", StringComparison.Ordinal)
            .Replace("</body>", Script + "</body>", StringComparison.Ordinal);
        var said = Browser.Run(Browser.Program, folder, print, FormattableString.Invariant($"html{{width:{setup.ContentWidth}px}}"), "--window-size=1400,1000",
            "--virtual-time-budget=20000", "--dump-dom");
        var theirs = Regex.Matches(said, @"cell (?<left>-?\d+\.\d{3}) (?<right>-?\d+\.\d{3})", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(20))
            .Select(m => (Left: double.Parse(m.Groups["left"].Value, CultureInfo.InvariantCulture),
                Right: double.Parse(m.Groups["right"].Value, CultureInfo.InvariantCulture))).ToList();
        var cells = reader.Document.QuerySelectorAll("td,th").ToList();
        Assert.True(cells.Count == theirs.Count && cells.Count >= 8, $"{cells.Count} cells, the browser has {theirs.Count}");
        var away = cells.Zip(theirs).Where(pair => ours.ContainsKey(pair.First)).Select(pair => (pair.First, pair.Second, Ours: ours[pair.First],
            Points: Math.Max(Math.Abs(pair.Second.Left - ours[pair.First].Left), Math.Abs(pair.Second.Right - ours[pair.First].Right)) / PixelsAPoint))
                .ToList();
        var faults = away.Where(cell => cell.Points > 2)
            .Select(cell => FormattableString.Invariant($"{cell.First.TextContent.Trim()}: {cell.Ours}, the browser has {cell.Second}")).ToList();
        Assert.True(faults.Count == 0, faults.Count + " cells lie elsewhere:\n" + string.Join('\n', faults.Take(20)));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name}: {away.Count} cells, edges off by {away.Select(a => a.Points).Order().ElementAt(away.Count / 2):0.000} pt in the middle, {away.Max(a => a.Points):0.000} at the most"));
        Assert.Equal(cells.Count, away.Count);
    });

    private static void Collect(Fragment fragment, double left, Dictionary<IElement, (double, double)> cells)
    {
        left += fragment.X;
        if (fragment.Box.Kind == BoxKind.Cell && fragment.Line is null && fragment.Box.Element is { } element && !fragment.Box.Anonymous)
            cells[element] = (left, left + fragment.Width);
        foreach (var child in fragment.Children) Collect(child, left, cells);
    }
}
