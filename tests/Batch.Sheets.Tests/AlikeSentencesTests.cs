using Batch.Sheets.Views;

namespace Batch.Sheets.Tests;

public class AlikeSentencesTests
{
    [Fact]
    public void The_same_of_several_airports_is_one_sentence_in_the_place_of_the_first() => Assert.Equal<string[]>(
        ["No altimeter setting known at XAND, XROA: the elevation was taken as pressure altitude.", "No surface wind known at XAND: calm.",
            "No surface wind known at XROA: the wind aloft was taken.", "No gravel correction in the book: runway 28 taken as paved."],
        [.. AlikeSentences.Gathered([
            "No altimeter setting known at XAND: the elevation was taken as pressure altitude.", "No surface wind known at XAND: calm.",
            "No altimeter setting known at XROA: the elevation was taken as pressure altitude.",
            "No surface wind known at XROA: the wind aloft was taken.", "No gravel correction in the book: runway 28 taken as paved.",
            "No gravel correction in the book: runway 28 taken as paved.",
        ])]);

    [Fact]
    public void What_follows_the_airport_need_not_be_parted_by_a_colon() =>
        Assert.Equal<string[]>(["Wind at XAND, XBEL by forecast.", "Wind at XCOR by report."],
            [.. AlikeSentences.Gathered(["Wind at XAND by forecast.", "Wind at XBEL by forecast.", "Wind at XCOR by report."])]);

    [Fact]
    public void Sentences_of_another_form_stay_as_they_are()
    {
        string[] sentences = ["1 passenger at standard weight (woman 178 lb, operator's own standard weights).",
            "Climb of Halden H9 ends at weight at takeoff 11,000 lb; 11,031 lb was asked; the value at the edge was taken."];
        Assert.Equal(sentences, AlikeSentences.Gathered(sentences));
    }
}
