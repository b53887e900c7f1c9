using Batch.Testing;

namespace Batch.Paper.Tests;

/// <summary>Nothing on a shipped sheet is set smaller than 7 pt, pictures included: it is read at arm's length in a dim cockpit.</summary>
public sealed class SmallestTextTests
{
    [Theory]
    [InlineData("T101.html")]
    [InlineData("T101-metric.html")]
    [InlineData("T101-german.html")]
    [InlineData("packet-ANA.html")]
    [InlineData("loads-XAND.html")]
    [InlineData("loads-XAND-german.html")]
    [InlineData("index.html")]
    [InlineData("values.html")]
    public void No_text_of_a_sheet_is_smaller_than_seven_points(string name)
    {
        using var pdf = Printed.Read(Printed.Print(File.ReadAllText(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "Golden", name))));
        var letters = pdf.GetPages().SelectMany(page => page.Letters).ToList();
        Assert.True(letters.Count > 500);
        Assert.All(letters, letter => Assert.True(letter.PointSize > 6.99, FormattableString.Invariant($"`{letter.Value}` is {letter.PointSize:0.00} pt")));
    }
}
