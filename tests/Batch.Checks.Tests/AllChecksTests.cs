using System.Text;
using System.Text.RegularExpressions;
using Batch.Checks.Rules;
using Batch.Testing;

namespace Batch.Checks.Tests;

public sealed partial class AllChecksTests
{
    [Fact]
    public void Every_check_class_is_listed_once()
    {
        var classes = typeof(AllChecks).Assembly.GetTypes().Where(type => type.IsClass && typeof(ICheck).IsAssignableFrom(type)).Select(type => type.Name)
            .Order(StringComparer.Ordinal);
        Assert.Equal(classes, AllChecks.List.Select(check => check.GetType().Name).Order(StringComparer.Ordinal));
        Assert.All(AllChecks.List, check => Assert.True(check.GetType().IsSealed));
    }

    [Fact]
    public void Ids_are_unique_and_well_formed()
    {
        Assert.Equal(AllChecks.List.Length, AllChecks.List.Select(check => check.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(AllChecks.List, check => Assert.Matches(Id(), check.Id));
    }

    [Fact]
    public void Every_check_has_a_title_inputs_an_actor_and_a_citation()
    {
        var rules = RuleSet.Load("us-charter").ByCheck;
        string[] actors = ["dispatcher", "captain", "chief pilot", "maintenance", "ramp"];
        // Only ICAO names holding fuel without an alternate, and only the European rules a flight duty period, duty in days, a rest by the duty before and a
        // recovery rest.
        Assert.All(AllChecks.List.Where(check => check.Id is not ("FUEL-05" or "CREW-13" or "CREW-14" or "CREW-15" or "CREW-16")), check =>
        {
            Assert.NotEmpty(check.Title);
            Assert.NotEmpty(check.Needs);
            Assert.Contains(check.Actor, actors);
            Assert.NotEmpty(RuleAmount.Cited(rules[check.Id]));
        });
        Assert.NotEmpty(RuleSet.Load("icao-annex-6").ByCheck["FUEL-05"]);
        Assert.All(new[] { "CREW-13", "CREW-14", "CREW-15", "CREW-16" }, id => Assert.NotEmpty(RuleSet.Load("eu-commercial").ByCheck[id]));
    }

    [Fact]
    public void Every_value_to_set_is_an_amount_of_a_rule_file() => Assert.All(
        AllChecks.List.SelectMany(check => check.Tunable.Select(part => (check.Id, Part: part))),
        tunable => Assert.Contains(
            RuleSet.Names.SelectMany(name => RuleSet.Load(name).ByCheck[tunable.Id]), rule => rule.Part == tunable.Part && rule.Value is not null));

    [Fact]
    public void No_finding_of_a_good_leg_names_a_person()
    {
        var plan = SomePlans.Planned();
        Assert.DoesNotContain(WeekChecker.CheckLeg(plan, SomePlans.Week(plan), RuleSet.Load("us-charter")).Findings,
            finding => finding.Text.Contains("Some Pilot", StringComparison.Ordinal));
    }

    /// <summary>The table in the room's page is written from the checks; UPDATE_SAMPLES=1 rewrites it.</summary>
    [Fact]
    public void The_page_of_the_room_lists_the_checks_as_they_are()
    {
        const string start = "<!-- checks -->\n";
        const string end = "<!-- end of checks -->";
        var path = RepositoryRoot.PathOf("src", "Batch.Checks", "README.md");
        var page = File.ReadAllText(path).ReplaceLineEndings("\n");
        var from = page.IndexOf(start, StringComparison.Ordinal) + start.Length;
        var to = page.IndexOf(end, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("UPDATE_SAMPLES") == "1")
        {
            File.WriteAllText(path, page[..from] + Table() + page[to..]);
            return;
        }

        Assert.Equal(Table(), page[from..to]);
    }

    private static string Table()
    {
        var table = new StringBuilder("| id | title | needs | citation (us-charter) | state | who acts | value to set |\n|---|---|---|---|---|---|---|\n");
        foreach (var check in AllChecks.List)
        {
            var set = new[] { "us-charter", "eu-commercial", "icao-annex-6" }.First(name => RuleSet.Load(name).ByCheck[check.Id].Any());
            var rules = RuleSet.Load(set).ByCheck[check.Id].Where(rule => rule.Part != Ruling.NotLookedAt).ToList();
            var cited = RuleAmount.Cited(rules) + (set == "us-charter" ? "" : $" ({set})");
            var states = rules.Select(rule => Ruling.StateOf([rule])).Distinct().OrderDescending()
                .Select(state => state.ToString().ToUpperInvariant() switch { "FAIL" => "fail", "CAUTION" => "caution", _ => "note" });
            table.Append(System.Globalization.CultureInfo.InvariantCulture,
                $"| {check.Id} | {check.Title} | {string.Join("; ", check.Needs)} | {cited} | {string.Join(" or ", states)} | {check.Actor} | {string.Join(" / ", check.Tunable)} |\n");
        }

        return table.ToString();
    }

    [GeneratedRegex("^[A-Z]{2,4}-[0-9]{2}$", RegexOptions.None, 1000)]
    private static partial Regex Id();
}
