using CsCheck;

namespace Batch.Flight.Tests;

public sealed class NearWordsTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char['A', 'D'], 0, 6];

    [Theory]
    [InlineData("XADN", "XAND", 1)] // two neighbours exchanged
    [InlineData("NORRA", "NORA", 1)]
    [InlineData("KITTEN", "SITTING", 3)]
    [InlineData("", "ABC", 3)]
    [InlineData("CA", "ABC", 3)] // no letter is edited twice, so not 2
    public void Edits_are_counted(string a, string b, int edits) => Assert.Equal(edits, NearWords.Distance(a, b));

    [Fact]
    public void Nearest_come_by_edits_then_by_name() =>
        Assert.Equal<string[]>(["XADA", "XAND", "XBND"], [.. NearWords.Nearest("xadn", ["XBND", "XBEL", "XAND", "XADA", "XADA", "XCNDE"])]);

    [Fact]
    public void Spelling_of_the_known_word_is_given_back() => Assert.Equal("Skua 9", Assert.Single(NearWords.Nearest("SKUA9", ["Skua 9", "Tern"])));

    [Fact]
    public void Nothing_is_near_an_empty_or_a_wholly_different_word()
    {
        Assert.Empty(NearWords.Nearest("  ", ["XAND"]));
        Assert.Empty(NearWords.Nearest("V7", ["B2", "CDE"]));
        Assert.Empty(NearWords.Nearest("QQQQQQ", ["XAND", "XBEL"]));
    }

    [Fact]
    public void Distance_is_symmetric_and_zero_only_for_the_same_word() =>
        Gen.Select(Words, Words).Sample((a, b) => NearWords.Distance(a, b) == NearWords.Distance(b, a) && NearWords.Distance(a, b) == 0 == (a == b));

    [Fact]
    public void Order_of_the_known_words_does_not_matter() =>
        Gen.Select(Words, Words.Array[0, 12]).Sample((word, known) => NearWords.Nearest(word, known).SequenceEqual(NearWords.Nearest(word, known.Reverse())));
}
