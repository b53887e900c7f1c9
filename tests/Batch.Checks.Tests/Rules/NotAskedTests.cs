using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Rules;

/// <summary>Where no rule of a set holds for a leg, the answer names the facts by which it is not asked.</summary>
public sealed class NotAskedTests
{
    [Theory]
    [InlineData("FUEL-01", LegPurpose.Charter, "flight rules")]
    [InlineData("ENR-04", LegPurpose.Charter, "flight rules, passengers aboard")]
    [InlineData("CREW-08", LegPurpose.Charter, "passengers aboard, number of pilots that the type requires, purpose")]
    [InlineData("ADM-01", LegPurpose.Ferry, "purpose, passengers aboard")]
    public void The_answer_names_what_decides(string check, LegPurpose purpose, string facts)
    {
        var empty = SomePlans.Planned();
        var answer = Ask.Worst(check, empty with { Purpose = purpose, Load = empty.Load with { Passengers = 0 } });
        Assert.Equal(Verdict.NotApplicable, answer.Verdict);
        Assert.Equal($"us-charter 2026-09 does not ask this of the leg, going by: {facts}.", answer.Text);
    }

    [Fact]
    public void A_text_that_several_rules_cite_is_cited_once()
    {
        var cited = Ask.Worst("CREW-11", SomePlans.Planned()).Citation.Split("; ");
        Assert.Equal(cited.Distinct(StringComparer.Ordinal), cited);
    }
}
