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
        [.. File.ReadLines(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "check-sentences.txt")).Where(line => line[0] != '#')
            .Select(line => line.Split('\t')).Select(parts => (parts[0], parts[1]))];

    /// <summary>11,031 lb are 5,003.58 kg and 31 lb are 14.06 kg by 0.45359237 kg to the pound.</summary>
    [Theory]
    [InlineData("Takeoff weight is 11,031 lb, 31 lb over the maximum takeoff weight (11,000 lb).",
        "Startmasse: 5.004 kg, 14 kg über dem Grenzwert (höchste Startmasse: 4.990 kg).")]
    [InlineData("Not checked: no forecast for XBEL at 18:40 local on 13 Dec 2026 is in the Bulletins; the landing minima are 1,200 ft and 3 SM.",
        "Nicht geprüft: keine Vorhersage für XBEL zur Zeit 13. Dez. 2026, 18:40 örtlich in den Bulletins; die Landeminima sind 1.200 ft und 3 SM.")]
    [InlineData("Fuel aboard is 879 lb, 1 lb short of the 880 lb required: taxi 40 lb + trip 640 lb + final reserve 200 lb for 30 min at 400 lb/h.",
        "Kraftstoff an Bord: 399 kg, 0,5 kg weniger als die 399 kg, die nötig sind: Rollen 18 kg + Reise 290 kg + Endreserve 91 kg für 30 min bei 181 kg/h.")]
    [InlineData("No forecast for XBEL is in the books.", "Keine Vorhersage für XBEL in den Büchern.")]
    [InlineData("Q-BRB has open deferred items; see that they are allowed for this leg: Reading light row 3, 20 lb",
        "Q-BRB hat offene zurückgestellte Mängel; sehen Sie, ob sie auf diesem Flug erlaubt sind: Reading light row 3, 20 lb")]
    public void A_sentence_is_said_in_german_with_its_numbers(string english, string german) => Assert.Equal(german, Say(english));

    /// <summary>1,240 lb are 562.45 kg, 1,320 lb are 598.74 kg.</summary>
    [Theory]
    [InlineData("T101/1: passengers 3 to 4, block fuel 1,240 to 1,320 lb, off blocks 14:30 to 15:00.",
        "T101/1: Fluggäste 3, jetzt 4, Kraftstoff beim Abblocken 562 kg, jetzt 599 kg, Abblocken 14:30, jetzt 15:00.")]
    [InlineData("T101/1: block fuel 562 to 599 kg, landing weight 3,724 to 3,810 kg.",
        "T101/1: Kraftstoff beim Abblocken 562 kg, jetzt 599 kg, Landemasse 3.724 kg, jetzt 3.810 kg.")]
    [InlineData("T101/1: state pass to fail (FUEL-03, ALT-02), captain RIM to KAI, second pilot KAI dropped, level 9,000 to 11,000 ft.",
        "T101/1: Ergebnis in Ordnung, jetzt nicht zulässig (FUEL-03, ALT-02), Kommandant RIM, jetzt KAI, zweiter Pilot KAI entfällt, Höhe 9.000, jetzt 11.000 ft.")]
    [InlineData("T101/1: off blocks Mon 7 Dec 23:30 to Tue 8 Dec 00:15, names, weights, seats or notes in the manifest, or cargo, figures of the log, the winds, the runways or the notes.", "T101/1: Abblocken Mo 7. Dez. 23:30, jetzt Di 8. Dez. 00:15, Namen, Massen, Sitze oder Bemerkungen in der Passagierliste, oder Fracht, Zahlen des Flugplans, die Winde, die Bahnen oder die Bemerkungen.")]
    [InlineData("T101/3: added, Sat 12 Dec 09:00 XAND to XBEL, Q-HAA.", "T101/3: neu, Sa 12. Dez. 09:00 XAND – XBEL, Q-HAA.")]
    [InlineData("T101/3: cancelled, was Wed 1 May 09:00 XAND to XBEL.", "T101/3: abgesagt, war Mi 1. Mai 09:00 XAND – XBEL.")]
    [InlineData("T101/1: passengers 3 to 4, remarks \"Ice, two bags; call first\" to \"Ice and one bag, on request\".",
        "T101/1: Fluggäste 3, jetzt 4, Bemerkungen \"Ice, two bags; call first\", jetzt \"Ice and one bag, on request\".")]
    [InlineData("T101/1: state pass to fail (FUEL-03), flown although it fails, because: \"the owner, by telephone, agreed\", off blocks 14:30 to 15:00.",
        "T101/1: Ergebnis in Ordnung, jetzt nicht zulässig (FUEL-03), trotzdem geflogen, denn: \"the owner, by telephone, agreed\", Abblocken 14:30, jetzt 15:00.")]
    public void What_changed_is_said_in_german(string english, string german) => Assert.Equal(german, Say(english));

    /// <summary>Names of sheets and columns stay as they stand in the book; 80 lb are 36.29 kg, 2,800 lb are 1,270.06 kg, 2,700 lb are 1,224.70 kg.</summary>
    [Theory]
    [InlineData("XADN is not in Airports; did you mean XAND?", "XADN steht nicht in Airports; meinten Sie XAND?")]
    [InlineData("Off blocks could be two different numbers", "Off blocks kann zwei verschiedene Zahlen bedeuten")]
    [InlineData("Date has a year of two digits", "Date: das Jahr hat nur zwei Ziffern")]
    [InlineData("Level is too high to be a flight level; is it in feet?", "Level ist für eine Flugfläche zu hoch; sind es Fuß?")]
    [InlineData("The alternate XBEL is the destination itself", "Der Ausweichflugplatz XBEL ist das Ziel selbst")]
    [InlineData("Bags has no unit here and is read in lb, but other cells of the column say kg",
        "Bags hat hier keine Einheit und wird in lb gelesen, aber andere Zellen der Spalte nennen kg")]
    [InlineData("Fuel plan has no unit here and is read in lb, but Fuel aboard is in L",
        "Fuel plan hat hier keine Einheit und wird in lb gelesen, aber Fuel aboard steht in L")]
    [InlineData("Weight of 80 lb is little for an adult; was it given in kilograms in a column of pounds?",
        "Weight von 36 kg ist wenig für einen Erwachsenen; sind es Kilogramm in einer Spalte für Pfund?")]
    [InlineData("Weight of 17 lb is little for a child of two years or more; is it an infant, or was it given in another unit?",
        "Weight von 8 kg ist wenig für ein Kind ab zwei Jahren; ist es ein Kleinkind, oder gilt eine andere Einheit?")]
    [InlineData("Child weight of 17 lb is little for a child of two years or more; was it given in another unit?",
        "Child weight von 8 kg ist wenig für ein Kind ab zwei Jahren; gilt eine andere Einheit?")]
    [InlineData("Child weight of 251 lb is much for a child of two years or more; was it given in another unit?",
        "Child weight von 114 kg ist viel für ein Kind ab zwei Jahren; gilt eine andere Einheit?")]
    [InlineData("Weight of 4 lb is little for an infant; was it given in another unit?", "Weight von 2 kg ist wenig für ein Kleinkind; gilt eine andere Einheit?")]
    [InlineData("Infant weight of 61 lb is much for an infant; was it given in another unit?",
        "Infant weight von 28 kg ist viel für ein Kleinkind; gilt eine andere Einheit?")]
    [InlineData("Pilot weight of 30 lb is little for an adult; was it given in another unit?",
        "Pilot weight von 14 kg ist wenig für einen Erwachsenen; gilt eine andere Einheit?")]
    [InlineData("Pilot weight of 401 lb is much for an adult; was it given in another unit?",
        "Pilot weight von 182 kg ist viel für einen Erwachsenen; gilt eine andere Einheit?")]
    [InlineData("Fuel aboard of 2,800 lb is more than the usable fuel of 2,700 lb; was it given in another unit?",
        "Fuel aboard von 1.270 kg ist mehr als der ausfliegbare Kraftstoff von 1.225 kg; gilt eine andere Einheit?")]
    [InlineData("T101/3 follows no leg T101/2; is a row missing?", "T101/3 folgt auf keinen Flug T101/2; fehlt eine Zeile?")]
    [InlineData("T101/2 leaves before T101/1; is it the next day, 8 Dec?", "T101/2 geht vor T101/1 ab; ist der nächste Tag gemeint, 8. Dez.?")]
    [InlineData("A row of Winds could not be read, and the leg is planned without it: Level is not a number",
        "Eine Zeile von Winds war nicht lesbar, und der Flug ist ohne sie geplant: Level ist keine Zahl")]
    [InlineData("Captain is not a code of Crew; did you mean RIM or KAI?", "Captain ist kein Kürzel aus Crew; meinten Sie RIM oder KAI?")]
    [InlineData("Second pilot is not yet decided; the leg does not pass until a code of Crew stands here",
        "Second pilot ist noch offen; der Flug besteht nicht, solange hier kein Kürzel aus Crew steht")]
    [InlineData("Alternate is not yet decided; the leg does not pass until one of Airports stands here",
        "Alternate ist noch offen; der Flug besteht nicht, solange hier kein Eintrag aus Airports steht")]
    public void A_doubt_of_reading_is_said_in_german(string english, string german) => Assert.Equal(german, Say(english));

    /// <summary>What is to be typed stays as it is.</summary>
    [Theory]
    [InlineData("Expected: XAND.", "Erwartet: XAND.")]
    [InlineData("Expected: charter, ferry, training.", "Erwartet: charter, ferry, training.")]
    [InlineData("Expected: auto, FL160, 16000 or 9500 ft.", "Erwartet: auto, FL160, 16000 oder 9500 ft.")]
    [InlineData("Expected: a number, with or without a unit (lb, kg).", "Erwartet: eine Zahl, mit oder ohne Einheit (lb, kg).")]
    [InlineData("Expected: a weight in the unit of the header, or with its unit, such as 80 kg.",
        "Erwartet: eine Masse in der Einheit des Kopfes, oder mit ihrer Einheit, wie 80 kg.")]
    [InlineData("Expected: degrees from -90 to 90, such as 41.5 or N41°30.0'.", "Erwartet: Grad von -90 bis 90, wie 41.5 or N41°30.0'.")]
    [InlineData("Expected: at most 2,700 lb.", "Erwartet: höchstens 1.225 kg.")]
    public void What_would_have_been_read_is_said_in_german(string english, string german) => Assert.Equal(german, Say(english));

    [Theory]
    [InlineData("Fly direct at the best level (clear week.xlsx/Legs/J31; Week 50.xlsx/Legs/R31: 2505 lb; week.xlsx/Legs/L31: auto)",
        "Direkt in der besten Höhe fliegen (week.xlsx/Legs/J31 leeren; Week 50.xlsx/Legs/R31: 2505 lb; week.xlsx/Legs/L31: auto)")]
    [InlineData("Leave one passenger behind, for example this one (clear row my week.xlsx/Manifest/128)",
        "Einen Fluggast zurücklassen, zum Beispiel diesen (Zeile my week.xlsx/Manifest/128 leeren)")]
    [InlineData("Stow Spare wheel at Nose instead of Tail (week.xlsx/Cargo/E2: Nose); then look at WB-07 of leg T101/1",
        "Spare wheel auf Nose statt Tail verstauen (week.xlsx/Cargo/E2: Nose); dann ansehen: WB-07 von Flug T101/1")]
    [InlineData("Fly the backup route NORRA V12 GULLS (week.xlsx/Legs/J2: NORRA V12 GULLS)",
        "Die Ersatzstrecke NORRA V12 GULLS fliegen (week.xlsx/Legs/J2: NORRA V12 GULLS)")]
    public void Cells_to_clear_are_said_in_german(string english, string german) => Assert.Equal(german, Say(english));

    [Fact]
    public void Every_check_has_german_sentences()
    {
        var ids = RuleSet.Names.SelectMany(name => RuleSet.Load(name).Texts).Select(text => text.Check).Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal).ToArray();
        Assert.True(ids.Length > 60, "only so many: " + string.Join(", ", ids));
        Assert.Empty(ids.Except(Sentences.Select(sentence => sentence.Check), StringComparer.Ordinal));
        None(Sentences.Where(sentence => Say(sentence.Text).Contains("class=\"foreign\"", StringComparison.Ordinal)).Select(sentence => sentence.Text));
    }

    [Fact]
    public void No_english_word_is_left_in_a_german_sentence() =>
        None(Sentences.Select(sentence => Say(sentence.Text)).Where(german => EnglishWords().IsMatch(german)));

    /// <summary>What is assumed, noted and offered, also what the sample has no case of.</summary>
    [Fact]
    public void Every_sentence_of_a_plan_has_german_words()
    {
        var sentences = File.ReadLines(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "plan-sentences.txt")).Where(line => line[0] != '#').ToArray();
        None(sentences.Select(Say).Where(german => german.Contains("class=\"foreign\"", StringComparison.Ordinal) || EnglishWords().IsMatch(german)));
    }

    /// <summary>
    /// A sentence without words stays English, to be seen, in its own language for a reader of the screen; and the check of the templates names it, once for
    /// all that differ in names and numbers.
    /// </summary>
    [Fact]
    public void A_sentence_without_words_is_marked_and_named()
    {
        Assert.Equal("<span class=\"foreign\" lang=\"en\">The mast at XAND is &lt;high&gt;: 45 kg.</span>",
            Renderer.Render("t.html", Trip with { Trip = "The mast at XAND is <high>: 100 lb." }).Html);
        var named = new[] { "XAND", "XBEL" }.SelectMany(airport => Renderer.Trace("t.html", Trip with { Trip = $"The mast at {airport} is high." }).Problems)
            .ToArray();
        Assert.Equal("There are no words for “The mast at … is high.”, so it stays English; add a line for it, with a name in braces such as {level} for each part that changes.", named[0].Text);
        Assert.Equal(named[0], named[1]);
        Assert.Equal(("t.html", 1), (named[0].File, named[0].Line));
    }

    /// <summary>A piece of a sentence is not taken for a name.</summary>
    [Fact]
    public void A_gap_holds_a_name_or_an_amount_only() =>
        Assert.Equal("für ABC ist nichts aufgezeichnet|<span class=\"foreign\" lang=\"en\">nothing is logged for ABC since the flood</span>",
            Say("nothing is logged for ABC") + "|" + Say("nothing is logged for ABC since the flood"));

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
            .. legs.SelectMany(leg => new[] { "assumptions", "notes" }.Where(name => leg.TryGetProperty(name, out _))
                .SelectMany(name => leg.GetProperty(name).EnumerateArray())).Select(text => text.GetString()),
        ];
        Assert.True(sentences.Length > 500, "only so many: " + sentences.Length.ToString(CultureInfo.InvariantCulture));
        None(sentences.Distinct().Where(sentence => Say(sentence!).Contains("class=\"foreign\"", StringComparison.Ordinal))!);
    }

    /// <summary>
    /// A pound is 0.45359237 kg, a US gallon 3.785411784 L: 6.7 lb/USG = 6.7 x 0.45359237 / 3.785411784 = 0.8028 kg/L. Names, paragraphs and cells are no
    /// amounts.
    /// </summary>
    [Theory]
    [InlineData("480 lb short of the reserve", "218 kg short of the reserve")]
    [InlineData("12,480.5 lb at 400 lb/h and 6.7 lb/USG", "5,661.1 kg at 181 kg/h and 0.803 kg/L")]
    [InlineData("14 CFR 135.154 and week.xlsx/Legs/R39 of Q-10 lb/x", "14 CFR 135.154 and week.xlsx/Legs/R39 of Q-10 lb/x")]
    [InlineData("FL250 at 12,500 ft, 3 SM, 7 Dec 2026", "FL250 at 12,500 ft, 3 SM, 7 Dec 2026")]
    public void Pounds_inside_a_text_become_kilograms(string text, string metric) =>
        Assert.Equal(metric, Renderer.Render("metric.html", Trip with { Trip = text }).Html);

    /// <summary>
    /// 1,464.6 lb are 664.33 kg, rounded up 665; 1,100 lb are 498.95 kg, rounded down 498; 498 less 665 is -167. One by one they would be 665, 499 and 166. The
    /// taxi of 70 lb is no figure of the finding: 31.75, so 32.
    /// </summary>
    [Theory]
    [InlineData("Fuel aboard is 1,100 lb, 365 lb short of the 1,465 lb required: taxi 70 lb",
        "Fuel aboard is 498 kg, 167 kg short of the 665 kg required: taxi 32 kg", "665 kg, 498 kg, \u2212167 kg", 1464.6, 1100, -364.6)]
    [InlineData("Takeoff weight is 11,031 lb, 31 lb over the maximum takeoff weight (11,000 lb).",
        "Takeoff weight is 5,004 kg, 15 kg over the maximum takeoff weight (4,989 kg).", "4,989 kg, 5,004 kg, \u221215 kg", 11000, 11030.4, -30.4)]
    public void A_sentence_in_kilograms_agrees_with_the_figures_below_it(
        string english, string metric, string figures, double limit, double actual, double margin)
    {
        var finding = SampleFindings.Fail with { Text = english, Required = limit, Actual = actual, Margin = margin, Unit = "lb" };
        var page = Renderer.Render("figures.html", Trip with { Watch = [Views.FindingView.Of(SampleWeek.Made.Legs[0], finding)] }).Html;
        Assert.Equal(metric + "|" + figures, page);
    }

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
        ["figures.html"] =
            "{{ watch[0].text | metric watch[0].margin }}|{{ watch[0].required | metric }}, {{ watch[0].actual | metric }}, {{ watch[0].margin | metric }}",
        ["_sentences.html"] = File.ReadAllText(Path.Combine(German, "_sentences.html")),
    }));

    private static readonly Views.TripModel Trip = (Views.TripModel)SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4);

    [GeneratedRegex(@"\b(the|with|and|or|is|are|not|for|after|weight|distance|runway|given|forecast)\b",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex EnglishWords();
}
