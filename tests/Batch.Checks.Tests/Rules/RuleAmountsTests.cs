using System.Globalization;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Rules;

/// <summary>The amounts of the rule files against the digest of the rule texts.</summary>
public sealed class RuleAmountsTests
{
    private static CheckFile Amounts { get; } = CheckFile.Read("rule-amounts.csv");

    public static IEnumerable<object[]> Ids => Amounts.Ids();

    [Theory]
    [MemberData(nameof(Ids))]
    public void Amount_citation_and_mark_are_those_of_the_digest(string id)
    {
        var row = Amounts[id];
        if (row["check"] == "flight levels")
        {
            var set = RuleSet.Load(row["rule set"]);
            Assert.Equal((row["value"], "ft", row["citation"]),
                (set.FlightLevelsFrom?.Value.ToString(CultureInfo.InvariantCulture), row["unit"], set.FlightLevelsCite));
            return;
        }

        var facts = Facts(row["conditions"]);
        var held = RuleSet.Load(row["rule set"]).ByCheck[row["check"]].Where(rule => rule.When.HoldsFor(facts) == Holds.Yes);
        var amount = RuleAmount.Strictest(held, row["part"]);
        Assert.NotNull(amount);
        Assert.Equal(double.Parse(row["value"], CultureInfo.InvariantCulture), amount.Value);
        Assert.Equal((row["unit"], row["citation"]), (amount.Unit, amount.Citation));
        Assert.All(amount.Rules, rule => Assert.Equal(row["mark"], rule.Mark switch
        {
            RuleMark.Verified => "V",
            RuleMark.Secondary => "V2",
            RuleMark.FromMemory => "M",
            RuleMark.OperatorBook => "O",
        }));
    }

    /// <summary>Every amount of the files that rests on a text has its row above; the operator's own amounts have none.</summary>
    [Fact]
    public void No_amount_of_a_text_is_without_a_row()
    {
        var known = Amounts.Rows.Select(row => (row["check"], row["part"], row["value"], row["unit"])).ToHashSet();
        // Units and thresholds that only restate a listed amount in another rule set, or rest on no text at all, are named here one by one.
        HashSet<string> free =
        [
            "PERF-01/factor", "PERF-03/factor", // the plain distance
            "ENR-08/reduced separation from", "ENR-08/reduced separation to", // from memory, in EnrouteChecksTests
            "WB-08/adult", // the mass of a man in eu-commercial
        ];
        var missing = RuleSet.Names.SelectMany(name => RuleSet.Load(name).Rules)
            .Where(rule => rule.Value is not null && rule.Mark != RuleMark.OperatorBook && !rule.Citation.Contains("no source",
                StringComparison.Ordinal) && !free.Contains(rule.Check + "/" + rule.Part))
            .Where(rule => !known.Contains((rule.Check, rule.Part, (rule.Value ?? 0).ToString(CultureInfo.InvariantCulture), rule.Unit)))
            .Select(rule => $"{rule.Check} {rule.Part} {(rule.Value ?? 0).ToString(CultureInfo.InvariantCulture)} {rule.Unit} ({rule.Citation})")
            .Distinct(StringComparer.Ordinal);
        Assert.Empty(missing);
        Assert.Equal(RuleSet.Names.Where(name => RuleSet.Load(name).FlightLevelsFrom is not null).Order(StringComparer.Ordinal),
            Amounts.Rows.Where(row => row["check"] == "flight levels").Select(row => row["rule set"]).Order(StringComparer.Ordinal));
    }

    private static LegFacts Facts(string conditions)
    {
        var words = conditions.Split(' ');
        return new LegFacts
        {
            Rules = Enum.Parse<FlightRules>(words[0], ignoreCase: true),
            Purpose = Enum.Parse<LegPurpose>(words[1], ignoreCase: true),
            Engine = Enum.Parse<EngineKind>(words[2], ignoreCase: true),
            Engines = int.Parse(words[3], CultureInfo.InvariantCulture),
            Seats = int.Parse(words[4], CultureInfo.InvariantCulture),
            Pressurised = words[5] == "pressurised",
            Passengers = true,
            Category = words.Length > 6 ? Enum.Parse<CertificationCategory>(words[6], ignoreCase: true) : null,
            TakeoffKg = 5000,
        };
    }
}
