using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Batch.Checks;
using Batch.Testing;

namespace Batch.Sheets.Tests;

/// <summary>Sentences of the program in the words of a template.</summary>
public partial class OwnWordsTests
{
    private static string German => RepositoryRoot.PathOf("templates", "examples", "german");

    private static (string Check, string Text)[] Sentences =>
        [.. File.ReadLines(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "check-sentences.txt")).Where(line => line[0] != '#').Select(line => line.Split('\t')).Select(parts => (parts[0], parts[1]))];

    /// <summary>11,031 lb are 5,003.58 kg and 31 lb are 14.06 kg by 0.45359237 kg to the pound.</summary>
    [Theory]
    [InlineData("Takeoff weight is 11,031 lb, 31 lb over the maximum takeoff weight (11,000 lb).", "Startmasse: 5.004 kg, 14 kg über dem Grenzwert (höchste Startmasse: 4.990 kg).")]
    [InlineData("Not checked: no forecast for XBEL at 18:40 local on 13 Dec 2026 is in the Bulletins; the landing minima are 1,200 ft and 3 SM.", "Nicht geprüft: keine Vorhersage für XBEL zur Zeit 13. Dez. 2026, 18:40 örtlich in den Bulletins; die Landeminima sind 1.200 ft und 3 SM.")]
    [InlineData("Fuel aboard is 879 lb, 1 lb short of the 880 lb required: taxi 40 lb + trip 640 lb + final reserve 200 lb for 30 min at 400 lb/h.", "Kraftstoff an Bord: 399 kg, 0 kg weniger als die 399 kg, die nötig sind: Rollen 18 kg + Reise 290 kg + Endreserve 91 kg für 30 min bei 181 kg/h.")]
    [InlineData("No forecast for XBEL is in the books.", "Keine Vorhersage für XBEL in den Büchern.")]
    [InlineData("Q-BRB has open deferred items; see that they are allowed for this leg: Reading light row 3, 20 lb", "Q-BRB hat offene zurückgestellte Mängel; sehen Sie, ob sie auf diesem Flug erlaubt sind: Reading light row 3, 20 lb")]
    public void A_sentence_is_said_in_german_with_its_numbers(string english, string german) => Assert.Equal(german, Say(english));

    [Fact]
    public void Every_check_has_german_sentences()
    {
        var ids = RuleSet.Names.SelectMany(name => RuleSet.Load(name).Texts).Select(text => text.Check).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        Assert.True(ids.Length > 60, "only so many: " + string.Join(", ", ids));
        Assert.Empty(ids.Except(Sentences.Select(sentence => sentence.Check), StringComparer.Ordinal));
        None(Sentences.Where(sentence => Say(sentence.Text).Contains("class=\"foreign\"", StringComparison.Ordinal)).Select(sentence => sentence.Text));
    }

    [Fact]
    public void No_english_word_is_left_in_a_german_sentence() =>
        None(Sentences.Select(sentence => Say(sentence.Text)).Where(german => EnglishWords().IsMatch(german)));

    /// <summary>A sentence without words stays English, to be seen, in its own language for a reader of the screen; and the check of the templates names it, once for all that differ in names and numbers.</summary>
    [Fact]
    public void A_sentence_without_words_is_marked_and_named()
    {
        Assert.Equal("<span class=\"foreign\" lang=\"en\">The mast at XAND is &lt;high&gt;: 45 kg.</span>", Renderer.Render("t.html", Trip with { Trip = "The mast at XAND is <high>: 100 lb." }).Html);
        var named = new[] { "XAND", "XBEL" }.SelectMany(airport => Renderer.Trace("t.html", Trip with { Trip = $"The mast at {airport} is high." }).Problems).ToArray();
        Assert.Equal("There are no words for “The mast at … is high.”, so it stays English; add a line for it, with a name in braces such as {level} for each part that changes.", named[0].Text);
        Assert.Equal(named[0], named[1]);
        Assert.Equal(("t.html", 1), (named[0].File, named[0].Line));
    }

    /// <summary>A piece of a sentence is not taken for a name.</summary>
    [Fact]
    public void A_gap_holds_a_name_or_an_amount_only() =>
        Assert.Equal("für ABC ist nichts aufgezeichnet|<span class=\"foreign\" lang=\"en\">nothing is logged for ABC since the flood</span>", Say("nothing is logged for ABC") + "|" + Say("nothing is logged for ABC since the flood"));

    /// <summary>What the program says of the sample: findings, remedies, assumptions, notes and why a leg could not be planned.</summary>
    [Fact]
    public void Every_sentence_of_the_sample_is_said_in_german()
    {
        using var run = JsonDocument.Parse(File.ReadAllText(RepositoryRoot.PathOf("output-samples", "run.json")));
        var legs = run.RootElement.GetProperty("legs").EnumerateArray().ToArray();
        var findings = legs.SelectMany(leg => leg.GetProperty("findings").EnumerateArray()).ToArray();
        string?[] sentences =
        [
            .. findings.Select(finding => finding.GetProperty("text").GetString()),
            .. findings.SelectMany(finding => finding.GetProperty("remedies").EnumerateArray()).Select(remedy => remedy.GetProperty("text").GetString()),
            .. legs.SelectMany(leg => new[] { "assumptions", "notes" }.Where(name => leg.TryGetProperty(name, out _)).SelectMany(name => leg.GetProperty(name).EnumerateArray())).Select(text => text.GetString()),
        ];
        Assert.True(sentences.Length > 500, "only so many: " + sentences.Length.ToString(CultureInfo.InvariantCulture));
        None(sentences.Distinct().Where(sentence => Say(sentence!).Contains("class=\"foreign\"", StringComparison.Ordinal))!);
    }

    /// <summary>A pound is 0.45359237 kg, a US gallon 3.785411784 L: 6.7 lb/USG = 6.7 x 0.45359237 / 3.785411784 = 0.8028 kg/L. Names, paragraphs and cells are no amounts.</summary>
    [Theory]
    [InlineData("480 lb short of the reserve", "218 kg short of the reserve")]
    [InlineData("12,480.5 lb at 400 lb/h and 6.7 lb/USG", "5,661.1 kg at 181 kg/h and 0.803 kg/L")]
    [InlineData("14 CFR 135.154 and week.xlsx/Legs/R39 of Q-10 lb/x", "14 CFR 135.154 and week.xlsx/Legs/R39 of Q-10 lb/x")]
    [InlineData("FL250 at 12,500 ft, 3 SM, 7 Dec 2026", "FL250 at 12,500 ft, 3 SM, 7 Dec 2026")]
    public void Pounds_inside_a_text_become_kilograms(string text, string metric) =>
        Assert.Equal(metric, Renderer.Render("metric.html", Trip with { Trip = text }).Html);

    private static void None(IEnumerable<string> texts)
    {
        var all = texts.ToArray();
        Assert.True(all.Length == 0, string.Join(Environment.NewLine, all));
    }

    private static string Say(string english) => System.Net.WebUtility.HtmlDecode(Renderer.Render("t.html", Trip with { Trip = english }).Html);

    private static readonly SheetRenderer Renderer = new(TemplateFolder.With(new Dictionary<string, string>
    {
        ["t.html"] = "{{ culture 'de-DE'; include '_sentences.html'; trip | say sentences }}",
        ["metric.html"] = "{{ trip | metric }}",
        ["_sentences.html"] = File.ReadAllText(Path.Combine(German, "_sentences.html")),
    }));

    private static readonly Views.TripModel Trip = (Views.TripModel)SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4);

    [GeneratedRegex(@"\b(the|with|and|or|is|are|not|for|after|weight|distance|runway|given|forecast)\b", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex EnglishWords();
}
