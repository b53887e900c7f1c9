using System.Text.RegularExpressions;
using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Sheets.Tests;

/// <summary>The example templates: the shipped sheet in other units and in another language.</summary>
public partial class ExampleTemplatesTests
{
    public static TheoryData<string> Examples => [.. Directory.GetDirectories(Folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private static string Folder => RepositoryRoot.PathOf("templates", "examples");

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_renders_every_trip_of_the_sample_without_a_problem(string name)
    {
        var renderer = new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, name)));
        Assert.All(SheetModels.Trips(SampleWeek.Made),
            trip => Assert.Empty(renderer.Render(SheetModels.TripSheet, SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, trip, PaperSize.A4)).Problems));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_sheet_is_the_one_that_was_looked_through(string name) =>
        Golden.Matches($"T101-{name}.html",
            new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, name)))
                .Render(SheetModels.TripSheet, SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4)).Html);

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_load_sheet_is_the_one_that_was_looked_through(string name)
    {
        var rendered = new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, name)))
            .Render(SheetModels.LoadSheet, SheetModels.Load(SampleWeek.Made, SampleWeek.Facts, ("XAND", new LocalDate(2026, 12, 8)), PaperSize.A4));
        Assert.Empty(rendered.Problems);
        Golden.Matches($"loads-XAND-{name}.html", rendered.Html);
    }

    /// <summary>Why a leg or a runway could not be computed, and doubts of reading, name weights too.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void No_sentence_of_an_example_sheet_names_pounds(string name)
    {
        const string Why = "The weight of 11,500 lb is 500 lb more than Climb of Skua 9 goes up to (11,000 lb): take load or fuel off, or give the table heavier rows.";
        var doubt = new Problem
        {
            State = State.Caution,
            Cell = "week.xlsx/Legs/S3",
            Text = "An amount of 9,000 lb is more than any tank holds.",
            Expected = "minimum, minimum+200, full, carry, or an amount such as 1200 lb or 150 USG"
        };
        var week = SampleWeek.Made with
        {
            Legs =
            [
                .. SampleWeek.Made.Legs.Select(leg => leg with
                {
                    Plan = leg.Plan switch
                    {
                        LegPlan.Unplanned none => none with { Why = Why, Where = Why },
                        LegPlan.Planned plan => plan with { Leg = plan.Leg with { Doubts = [doubt] } },
                        _ => throw new System.Diagnostics.UnreachableException(),
                    },
                }),
            ],
        };
        var renderer = new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, name)));
        (string Template, SheetModel Model)[] sheets =
        [
            .. SheetModels.Trips(week).Select(trip => (SheetModels.TripSheet, SheetModels.Trip(week, SampleWeek.Facts, trip, PaperSize.A4))),
            .. SheetModels.Departures(week).Select(place => (SheetModels.LoadSheet, SheetModels.Load(week, SampleWeek.Facts, place, PaperSize.A4))),
            .. SheetModels.People(week).Select(code => (SheetModels.CrewPacket, SheetModels.Packet(week, SampleWeek.Facts, code, PaperSize.A4))),
        ];
        var pages = sheets.Select(sheet => renderer.Render(sheet.Template, sheet.Model).Html).ToArray();
        Assert.Contains(pages, page => page.Contains("5,216 kg", StringComparison.Ordinal) || page.Contains("5.216 kg", StringComparison.Ordinal));
        Assert.All(pages, page => Assert.DoesNotMatch(@"[0-9] lb\b", page));
    }

    [Fact]
    public void The_german_packet_has_no_english_word_on_its_cover()
    {
        var rendered = new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, "german")))
            .Render(SheetModels.CrewPacket, SheetModels.Cover(SheetModels.Packet(SampleWeek.Made, SampleWeek.Facts, "ANA", PaperSize.A4)));
        Assert.Empty(rendered.Problems);
        var texts = Html().Replace(rendered.Html, " ");
        Assert.Contains("Flugzeit in 24 Stunden", texts, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(the|to|of|with|Leg|Duty|duty|Flight|flight|time|rest|rests|Report|report|Release|release|limit|local|captain|pilot|Pass|Fail|Caution|Page|Fuel|Mon|Tue|Dec)\b", texts);
    }

    /// <summary>So that a change of the shipped sheet is not forgotten in an example.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void A_file_of_an_example_uses_the_values_that_the_shipped_file_uses(string name)
    {
        Assert.All(Directory.GetFiles(Path.Combine(Folder, name)).Select(path => Path.GetFileName(path)).Where(
            file => TemplateFolder.Shipped.Text(file) is not null), file =>
        {
            var shipped = Paths(TemplateFolder.Shipped.Text(file) ?? "");
            var own = Paths(File.ReadAllText(Path.Combine(Folder, name, file)));
            Assert.Equal((file, string.Join(' ', shipped)), (file, string.Join(' ', own)));
        });
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_pounds_or_gallons_are_left_on_an_example_sheet(string name)
    {
        var files = Directory.GetFiles(Path.Combine(Folder, name)).Select(File.ReadAllText).ToArray();
        Assert.All(files, text => Assert.DoesNotMatch(@"\| (lb|usg|lb_per_hour)\b|\bUSG\b|>lb<", text));
    }

    [Fact]
    public void The_metric_sheet_holds_the_same_fuel_and_weights_in_kilograms_and_litres()
    {
        // 1,240 lb of fuel aboard: 1,240 x 0.45359237 = 562.45 kg; the uplift of the sample in litres is its pounds / 6.7 lb/USG x 3.785411784 L/USG.
        var values = Render("german", "{{ legs[0].plan.fuel.aboard | lb 3 }}|{{ legs[0].plan.fuel.aboard | kg 3 }}|{{ legs[0].plan.fuel.aboard | litres 3 }}|{{ legs[0].plan.fuel.density | kg_per_litre 4 }}|{{ legs[0].plan.fuel.density | number 4 }}")
            .Split('|').Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(values[0] * 0.45359237, values[1], 0.002);
        Assert.Equal(values[0] / values[4] * 3.785411784, values[2], 0.002);
        Assert.Equal(values[1] / values[2], values[3], 0.0001);
    }

    /// <summary>Names of documents stay as they are; words beside them are German.</summary>
    [Fact]
    public void No_citation_of_a_rule_stays_english_on_the_german_sheet()
    {
        string[] cited = [.. Directory.GetFiles(RepositoryRoot.PathOf("src", "Batch.Checks", "Rules"), "*.json")
            .SelectMany(file => Cited().Matches(File.ReadAllText(file)).Select(cite => cite.Groups["cite"].Value)).Distinct(StringComparer.Ordinal)];
        Assert.NotEmpty(cited);
        var finding = SampleFindings.Fail with { Citation = string.Join("; ", cited) };
        var week = SampleWeek.Made with { Legs = [SampleWeek.Made.Legs[0] with { Findings = [finding] }] };
        var html = new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, "german")))
            .Render(SheetModels.TripSheet, SheetModels.Trip(week, SampleWeek.Facts, "T101", PaperSize.A4)).Html;
        var source = html.Split("<p class=\"source\">")[1].Split("</p>")[0];
        Assert.Contains("14 CFR 135.213", source, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(operator|the|of|by|as|and|with|names|sheet|book|flight manual)\b", source);
    }

    [Fact]
    public void The_german_sheet_writes_numbers_and_days_in_its_own_way()
    {
        Assert.Equal("4.321,50|Mo 7. Dez.|07.12.2026|14.000", Render("german",
            "{{ culture 'de-DE' }}{{ 4321.5 | number 2 }}|{{ begins | local_date 'ddd d. MMM' }}|{{ begins | utc_date 'dd.MM.uuuu' }}|{{ legs[0].plan.route.level | ft }}"));
        var page = new SheetRenderer(TemplateFolder.Over(Path.Combine(Folder, "german")))
            .Render(SheetModels.TripSheet, SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4)).Html;
        Assert.Contains("<html lang=\"de\">", page, StringComparison.Ordinal);
        var texts = Html().Replace(English().Replace(page, ""), " ");
        Assert.DoesNotMatch(@"\b(Fuel|Weight|Landing|Takeoff|Leg|Required|Planned|Left|Margin|Time|Level|Page|Seat|Bags|outside|Pass|Fail|Caution)\b", texts);
    }

    [Fact]
    public void Every_check_has_a_german_title_and_everyone_who_acts_a_german_name()
    {
        var titles = RuleSet.Names.SelectMany(name => RuleSet.Load(name).Texts).Select(text => text.Title).Append("Data as read")
            .Distinct(StringComparer.Ordinal).ToArray();
        Assert.True(titles.Length > 60, "only so many: " + string.Join(", ", titles));
        var words = Render("german", "{{ include '_words.html' }}" + string.Concat(titles.Select(title => "{{ '" + title + "' | translate titles }}|")));
        Assert.Empty(titles.Zip(words.Split('|', StringSplitOptions.TrimEntries)).Where(pair => pair.First == pair.Second).Select(pair => pair.First));
        Assert.DoesNotContain("captain", Render("german", "{{ include '_words.html' }}{{ 'captain' | translate words }}"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{{ culture 'xx-nowhere' }}", "The language `xx-nowhere` is not known")]
    [InlineData("{{ begins | local_date 'Q' }}", "The pattern `Q` of a date is not understood")]
    [InlineData("{{ legs[0].plan.route_picture | draw 'stone' }}", "in `lb` or `kg`, not in `stone`")]
    [InlineData("{{ legs[0].plan.route_picture | draw 'kg' { 'true noth': 'Nord' } }}", "did you mean `true north`?")]
    [InlineData("{{ trip | draw 'kg' }}", "`draw` wants a picture, not a text")]
    [InlineData("{{ legs | metric }}", "`metric` wants a number or a text, not ")]
    [InlineData("{{ legs | say }}", "`say` wants a text, not ")]
    public void What_a_template_asks_for_wrongly_is_said(string text, string says)
    {
        var renderer = new SheetRenderer(TemplateFolder.With(new Dictionary<string, string> { ["t.html"] = text }));
        Assert.Contains(says, Assert.Single(renderer.Render("t.html", SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4)).Problems).Text,
            StringComparison.Ordinal);
    }

    private static string Render(string example, string text)
    {
        var result = new SheetRenderer(TemplateFolder.With(
            new Dictionary<string, string> { ["t.html"] = text, ["_words.html"] = File.ReadAllText(Path.Combine(Folder, example, "_words.html")) }))
            .Render("t.html", SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4));
        Assert.Empty(result.Problems);
        return result.Html;
    }

    [GeneratedRegex("\"cite\": \"(?<cite>[^\"]*)\"", RegexOptions.None, 5_000)]
    private static partial Regex Cited();

    /// <summary>The paths with a dot inside the braces of a template, without those that only choose words or days.</summary>
    /// <summary>The values that are printed; the margin by which a text in kilograms agrees with its figures is not.</summary>
    private static string[] Paths(string text) =>
    [
        .. Braces().Matches(text)
            .SelectMany(braces => Dotted().Matches(braces.Value.Replace(" $1.margin", "", StringComparison.Ordinal)).Select(path => path.Value))
            .Select(path => Names().Replace(path, ""))
                .Where(path => path.Contains('.', StringComparison.Ordinal) && !path.EndsWith(".html", StringComparison.Ordinal) && path is not ("array.join"
                or "string.split" or "string.capitalize" or "array.add" or "operator.language")).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
    ];

    [GeneratedRegex(@"\{\{.*?\}\}", RegexOptions.Singleline, 5_000)]
    private static partial Regex Braces();

    [GeneratedRegex(@"\$?[a-z_0-9]+(?:\[[a-z0-9]+\])?(?:\.[a-z_0-9]+)+", RegexOptions.None, 5_000)]
    private static partial Regex Dotted();

    [GeneratedRegex(@"\.(?:word|code|utc_date|utc_day|local_date|local_day)$", RegexOptions.None, 5_000)]
    private static partial Regex Names();

    [GeneratedRegex(@"<(?<tag>style|title)[^>]*>.*?</\k<tag>>|<[^>]*>", RegexOptions.Singleline, 5_000)]
    private static partial Regex Html();

    [GeneratedRegex("<div class=\"finding.*?</div>\\s*</div>|<ul class=\"list\">.*?</ul>", RegexOptions.Singleline, 5_000)]
    private static partial Regex English();
}
