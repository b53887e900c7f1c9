using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Sheets.Pictures;

namespace Batch.Sheets.Tests;

/// <summary>
/// Letters stand out from what is behind them by at least 4.5 to 1 (WCAG 2.2, success criterion 1.4.3; the ratio as its relative luminance defines it), by day
/// and by night.
/// </summary>
public partial class ContrastTests
{
    private const double Least = 4.5;

    public static TheoryData<string, string, string> Letters
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var letters in new[] { "--ink", "--soft", "--fail", "--caution", "--pass" })
            {
                foreach (var ground in new[] { "--ground", "--field" })
                {
                    data.Add("day", letters, ground);
                    data.Add("night", letters, ground);
                }
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Letters_of_a_sheet_can_be_read(string light, string letters, string ground)
    {
        var colours = Colours(light == "night");
        Assert.True(Ratio(Of(colours[letters]), Of(colours[ground])) >= Least,
            string.Create(CultureInfo.InvariantCulture, $"{letters} on {ground} by {light}: {Ratio(Of(colours[letters]), Of(colours[ground])):0.00}"));
    }

    [Fact]
    public void Letters_with_a_colour_of_their_own_can_be_read_on_white()
    {
        var colours = TemplateFolder.Shipped.Names.SelectMany(name => OwnColour().Matches((TemplateFolder.Shipped.Text(name) ?? "")
            .Split("prefers-color-scheme: dark")[0]).Select(match => (name, Colour: match.Groups["colour"].Value))).Distinct().ToArray();
        Assert.NotEmpty(colours);
        Assert.All(colours, pair => Assert.True(Ratio(Of(pair.Colour), Of("#ffffff")) >= Least, pair.ToString()));
    }

    [Theory]
    [InlineData(Ink.Black, Ink.White)]
    [InlineData(Ink.Black, Ink.Ground)]
    [InlineData(Ink.Black, Ink.Tint)]
    [InlineData(Ink.Grey, Ink.White)]
    [InlineData(Ink.Grey, Ink.Ground)]
    [InlineData(Ink.Fail, Ink.White)]
    public void Letters_of_a_picture_can_be_read(string letters, string ground) =>
        Assert.True(Ratio(Of(letters), Of(ground)) >= Least, Ratio(Of(letters), Of(ground)).ToString("0.00", CultureInfo.InvariantCulture));

    [Theory]
    [InlineData(Ink.Black)]
    [InlineData(Ink.Grey)]
    [InlineData(Ink.Fail)]
    public void Letters_of_a_picture_can_be_read_by_night(string letters)
    {
        // The style sheet turns pictures over: invert(0.92), then hue-rotate(180deg), by the matrices of the Filter Effects Module Level 1.
        Assert.Contains("invert(0.92) hue-rotate(180deg)", TemplateFolder.Shipped.Text("_style.css"), StringComparison.Ordinal);
        var night = Of(Colours(isDark: true)["--ground"]);
        Assert.True(Ratio(Turned(Of(letters)), night) >= Least, Ratio(Turned(Of(letters)), night).ToString("0.00", CultureInfo.InvariantCulture));
    }

    /// <summary>
    /// On paper under a red lamp only red light comes back, and white paper sends all of it: what counts is how little red an ink has. The ratio is that of the
    /// guideline, with the red share for the luminance (our reading of it, no source). A red of 118 of 255 is 0.181 in linear light: 1.05 / 0.231 = 4.5.
    /// </summary>
    [Fact]
    public void Letters_and_marks_on_paper_can_be_read_under_a_red_lamp()
    {
        var colours = Colours(isDark: false);
        string[] inks = [colours["--ink"], colours["--soft"], colours["--fail"], colours["--caution"], colours["--pass"], Ink.Black, Ink.Grey, Ink.Fail,
            .. new[] { "pass", "caution", "fail", "unplanned" }
                .Select(code => Hex().Match(StateMark.Of(code, code).Html.Replace("#ffffff", "", StringComparison.Ordinal)).Value)];
        Assert.All(inks, ink => Assert.True(1.05 / (Luminance([Of(ink)[0], Of(ink)[0], Of(ink)[0]]) + 0.05) >= Least, ink));
    }

    [Theory]
    [InlineData("#000000", "#ffffff", 21)]
    [InlineData("#777777", "#ffffff", 4.48)] // the well-known grey that just fails
    public void The_ratio_is_that_of_the_guideline(string a, string b, double ratio) => Assert.Equal(ratio, Ratio(Of(a), Of(b)), 0.005);

    private static Dictionary<string, string> Colours(bool isDark)
    {
        var css = TemplateFolder.Shipped.Text("_style.css") ?? "";
        var at = isDark ? css.IndexOf("prefers-color-scheme: dark", StringComparison.Ordinal) : 0;
        return Custom().Matches(css[at..]).GroupBy(match => match.Groups["name"].Value, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First().Groups["colour"].Value, StringComparer.Ordinal);
    }

    private static double[] Of(string hex) =>
        [.. Enumerable.Range(0, 3).Select(k => int.Parse(hex.AsSpan(1 + (2 * k), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)];

    private static double Ratio(double[] a, double[] b)
    {
        var (first, second) = (Luminance(a), Luminance(b));
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    private static double Luminance(double[] colour)
    {
        double[] linear = [.. colour.Select(share => share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4))];
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }

    private static double[] Turned(double[] colour)
    {
        double[] inverted = [.. colour.Select(share => 0.92 - (0.84 * share))];
        double[][] turn = [[-0.574, 1.430, 0.144], [0.426, 0.430, 0.144], [0.426, 1.430, -0.856]];
        return [.. turn.Select(row => Math.Clamp(row.Zip(inverted, (factor, share) => factor * share).Sum(), 0, 1))];
    }

    [GeneratedRegex("(?<name>--[a-z]+): (?<colour>#[0-9a-f]{6})", RegexOptions.ExplicitCapture, 5_000)]
    private static partial Regex Custom();

    [GeneratedRegex("#[0-9a-f]{6}", RegexOptions.None, 5_000)]
    private static partial Regex Hex();

    [GeneratedRegex("[^-]color: (?<colour>#[0-9a-f]{6})", RegexOptions.ExplicitCapture, 5_000)]
    private static partial Regex OwnColour();
}
