using System.Text.RegularExpressions;
using Batch.Testing;

namespace Batch.Sheets.Tests;

/// <summary>
/// Headings begin with the first level and leave none out on the way down, so that who listens to a sheet finds its parts (WCAG 2.2, technique G141).
/// </summary>
public partial class HeadingTests
{
    public static TheoryData<string> Pages => [.. Directory.GetFiles(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "Golden"), "*.html")
        .Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Headings_of_a_page_are_in_order(string page)
    {
        var html = File.ReadAllText(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "Golden", page));
        var headings = Heading().Matches(html).Select(match => (Level: match.Groups["level"].Value[0] - '0', Text: match.Groups["text"].Value)).ToArray();
        Assert.True(headings.Length > 1, page + " has no headings");
        Assert.Equal(1, headings[0].Level);
        var leaps = headings.Zip(headings.Skip(1)).Where(pair => pair.Second.Level > pair.First.Level + 1).Select(pair => pair.First + " then " + pair.Second);
        Assert.Empty(leaps);
    }

    [GeneratedRegex("<h(?<level>[1-6])[^>]*>(?<text>.*?)</h[1-6]>", RegexOptions.ExplicitCapture | RegexOptions.Singleline, 5_000)]
    private static partial Regex Heading();
}
