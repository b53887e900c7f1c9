using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Rules;

/// <summary>A finding that the Checks sheet makes milder says so, with the reason, whatever sentence it has.</summary>
public sealed class MilderWordsTests
{
    private const string Reason = " The Checks sheet makes this a caution: agreed with the inspector.";

    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static Finding Milder(string check, LegPlan.Planned leg) => Ask.Worst(check, leg, week => week.With(
        new CheckSetting
        {
            Check = check,
            Value = "",
            State = State.Caution,
            On = null,
            Reason = "agreed with the inspector",
            Origin = SomePlans.Row("operator.xlsx/Checks", 5)
        }));

    public static TheoryData<string> Checks => ["ACFT-05", "CREW-08", "WB-05", "WB-06", "WB-07"];

    [Theory]
    [MemberData(nameof(Checks))]
    public void The_reason_stands_at_the_end_of_the_sentence(string check)
    {
        var finding = Milder(check, check switch
        {
            "ACFT-05" => Leg with
            {
                Aircraft = Leg.Aircraft with { VorCheckedOn = SomePlans.Date.PlusDays(-31) },
                Type = Leg.Type with { Equipment = "SD/LB1" }
            },
            "CREW-08" => Leg with { Captain = SomePlans.Pilot() with { ThirdLastLanding = SomePlans.Date.PlusDays(-91), ThirdLastNightLanding = null } },
            "WB-05" => Leg with
            {
                Load = Leg.Load with
                {
                    Tests = [SomePlans.Test("landing", EnvelopeCase.Landing, 5860, 205.5),
                SomePlans.Test("zero fuel", EnvelopeCase.ZeroFuel, 5400, 206), SomePlans.Test("during the flight", EnvelopeCase.Takeoff, 6000)]
                }
            },
            "WB-06" => Leg with { Type = Leg.Type with { Seats = 1 } },
            _ => Leg with { Load = Leg.Load with { Stations = [new StationLoad(SomePlans.Front, new Pounds(400), 3)] } },
        });
        Assert.Equal(Verdict.Caution, finding.Verdict);
        var text = finding.Text.Split(" Not looked at: ")[0];
        Assert.EndsWith(Reason, text, StringComparison.Ordinal);
        Assert.Equal("agreed with the inspector", finding.Loosened);
    }
}
