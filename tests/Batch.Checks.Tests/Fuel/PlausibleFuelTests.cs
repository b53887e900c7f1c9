using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Fuel;

public sealed class PlausibleFuelTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Density(double? density, FuelKind? fuel = FuelKind.JetA1) =>
        Leg with { Type = Leg.Type with { FuelDensity = density, Fuel = fuel } };

    // Usual densities: Jet A-1 6.7 lb/US gal, Avgas 6.0 (FAA handbooks); 2 % of 6.7 is 0.134.
    [Fact]
    public void A_density_is_near_the_usual_one()
    {
        Ask.Boundary("FUEL-08", Density(6.833), Density(6.835), Density(null), Verdict.Caution);
        Ask.Boundary("FUEL-08", Density(6.567), Density(6.565), Density(6.7, null), Verdict.Caution);
        Ask.Boundary("FUEL-08", Density(6.11, FuelKind.Avgas), Density(6.13, FuelKind.Avgas), null, Verdict.Caution);
    }

    [Fact]
    public void Kilograms_a_litre_are_seen_as_a_wrong_unit()
    {
        var finding = Ask.Worst("FUEL-08", Density(0.803));
        Assert.Equal("The difference of the Jet A-1 density of Skua 9 (0.803 lb/USG) from the usual 6.7 lb/USG is 88.1%, 86.1% over the plausible range (2%).",
            finding.Text);
    }

    [Fact]
    public void An_aircraft_burns_about_what_its_tables_say()
    {
        LegPlan.Planned Bias(double bias) => Leg with { Aircraft = Leg.Aircraft with { BurnBias = bias } };
        Ask.Boundary("FUEL-08", Bias(0.1), Bias(0.101), null, Verdict.Caution);
        Ask.Boundary("FUEL-08", Bias(-0.1), Bias(-0.101), null, Verdict.Caution);
    }
}
