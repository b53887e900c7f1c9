using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Airframe;

/// <summary>Equipment that the kind of flight asks for.</summary>
internal sealed class FittedEquipment : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-04";

    /// <inheritdoc/>
    public string Title => "Equipment for the kind of flight";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: IFR equipment", "Aircraft: night equipment", "Aircraft: second power source", "Aircraft: engine trend monitoring", "Aircraft: TAWS"];

    /// <inheritdoc/>
    public string Actor => "maintenance";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var aircraft = leg.Aircraft;
        var answers = new List<Finding>();
        Add("IFR equipment", aircraft.InstrumentEquipment, nameof(Aircraft.InstrumentEquipment), "equipment for flight under IFR");
        if (leg.Plan.Daylight.Night > Duration.Zero)
        {
            Add("night equipment", aircraft.NightEquipment, nameof(Aircraft.NightEquipment), "equipment for flight at night");
        }

        Add("second power source", aircraft.SecondPowerSource, nameof(Aircraft.SecondPowerSource), "second source of power for the instruments, which one engine with passengers under IFR asks for");
        Add("engine trend monitoring", aircraft.TrendMonitoring, nameof(Aircraft.TrendMonitoring), "engine trend monitoring, which one engine with passengers under IFR asks for");
        if (ruling.Condition("TAWS class A") is { } best)
        {
            answers.Add(Terrain(ruling, aircraft, best, "A"));
        }
        else if (ruling.Condition("TAWS class B") is { } either)
        {
            answers.Add(Terrain(ruling, aircraft, either, "B"));
        }

        return answers.Count > 0 ? answers : [ruling.NotApplicable("The leg asks for no equipment beyond that for VFR by day.")];

        void Add(string part, bool? has, string field, string what)
        {
            if (ruling.Condition(part) is not { } by) return;
            var cell = aircraft.Origin.Cell(field);
            answers.Add(has switch
            {
                null => ruling.NotChecked($"whether {aircraft.Registration} has {what} is not given", cell),
                true => ruling.Pass($"{aircraft.Registration} has {what}.", by, cell),
                false => ruling.Trips(by, $"{aircraft.Registration} has no {what}.", cell),
            });
        }
    }

    private static Finding Terrain(Ruling ruling, Aircraft aircraft, RuleAmount by, string least)
    {
        var cell = aircraft.Origin.Cell(nameof(Aircraft.TerrainWarning));
        return aircraft.TerrainWarning switch
        {
            "" => ruling.NotChecked($"the class of terrain warning of {aircraft.Registration} is not given; class {least} is required", cell),
            "A" => ruling.Pass($"{aircraft.Registration} has terrain warning of class A.", by, cell),
            "B" when least == "B" => ruling.Pass($"{aircraft.Registration} has terrain warning of class B.", by, cell),
            _ => ruling.Trips(by, $"{aircraft.Registration} has {(aircraft.TerrainWarning == "B" ? "terrain warning of class B" : "no terrain warning system")}; class {least} is required with its seats.", cell),
        };
    }
}
