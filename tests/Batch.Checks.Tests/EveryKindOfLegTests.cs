using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

/// <summary>Whatever the kind of leg, known or not, every check answers and none breaks down.</summary>
public sealed class EveryKindOfLegTests
{
    public static IEnumerable<object[]> RuleSets => RuleSet.Names.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(RuleSets))]
    public void Every_check_answers_on_every_kind_of_leg(string rules)
    {
        var set = RuleSet.Load(rules);
        var ids = AllChecks.List.Select(check => check.Id).Order(StringComparer.Ordinal).ToArray();
        foreach (var plan in Legs())
        {
            var week = SomePlans.Week(plan);
            foreach (var forecasts in new[] { Forecasts.None, Ask.Fair("XAND", "XBEL", "XDUN"), Ask.Forecast("XAND", 100, 300)
                .And(Ask.Forecast("XBEL", 100, 300)) })
            {
                var answers = WeekChecker.CheckLeg(plan, week, set, forecasts).Findings;
                Assert.Equal(ids, answers.Select(answer => answer.Check).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
                Assert.All(answers, answer => Assert.True(answer.Text.EndsWith('.') && answer.Citation.Length > 0, answer.Check + ": " + answer.Text));
            }
        }
    }

    private static IEnumerable<LegPlan.Planned> Legs()
    {
        var leg = SomePlans.Planned();
        return
            from flightRules in new[] { FlightRules.Ifr, FlightRules.Vfr }
            from purpose in new[] { LegPurpose.Charter, LegPurpose.Ferry }
            from engines in new int?[] { null, 1, 2 }
            from seats in new int?[] { null, 9, 12 }
            from engine in new EngineKind?[] { null, EngineKind.Turboprop }
            from passengers in new[] { 0, 2 }
            from country in new[] { "", "Elsewhere" }
            select leg with
            {
                Rules = flightRules,
                Purpose = purpose,
                Type = leg.Type with { Engines = engines, Seats = seats, Engine = engine, Pressurised = seats is null ? null : seats > 5 },
                Load = leg.Load with { Passengers = passengers },
                To = leg.To with { Country = country, Airspace = country.Length == 0 ? "" : "G" },
                Daylight = leg.Daylight with { IsNightLanding = engines == 2, Night = Duration.FromMinutes(engines == 2 ? 20 : 0) },
            };
    }
}
