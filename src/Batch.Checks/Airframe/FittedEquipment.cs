using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Airframe;

/// <summary>Equipment that the kind of flight asks for.</summary>
internal sealed class FittedEquipment : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-04";

    /// <inheritdoc/>
    public string Title => "Equipment for the kind of flight";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: IFR equipment", "Aircraft: night equipment", "Aircraft: second power source",
        "Aircraft: engine trend monitoring", "Aircraft: TAWS", "Types: equipment, high up"];

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

        Add("second power source", aircraft.SecondPowerSource, nameof(Aircraft.SecondPowerSource),
            "second source of power for the instruments (required of a single engine with passengers under IFR)", "a ");
        Add("engine trend monitoring", aircraft.TrendMonitoring, nameof(Aircraft.TrendMonitoring),
            "engine trend monitoring (required of a single engine with passengers under IFR)");
        if (ruling.AmountOrNone("distance measuring from") is { } from && leg.Plan.Profile.Highest.Value >= from.Value)
        {
            answers.Add(Distance(leg, ruling, from));
        }

        if (ruling.Condition("TAWS class A") is { } best)
        {
            answers.Add(Terrain(ruling, aircraft, best, "A"));
        }
        else if (ruling.Condition("TAWS class B") is { } either)
        {
            answers.Add(Terrain(ruling, aircraft, either, "B"));
        }

        return answers.Count > 0 ? answers : [ruling.NotApplicable("The leg asks for no equipment beyond that for VFR by day.")];

        void Add(string part, bool? has, string field, string what, string article = "")
        {
            if (ruling.Condition(part) is not { } by) return;
            var cell = aircraft.Origin.Cell(field);
            answers.Add(has switch
            {
                null => ruling.NotChecked($"whether {aircraft.Registration} has {article}{what} is not given", cell),
                true => ruling.Pass($"{aircraft.Registration} has {article}{what}.", by, cell),
                false => ruling.Trips(by, $"{aircraft.Registration} has no {what}.", cell),
            });
        }
    }

    /// <summary>Item 10a of a flight plan: S holds VOR, O is VOR; D is distance measuring, G, R, I and C are area navigation.</summary>
    private static Finding Distance(LegUnderCheck leg, Ruling ruling, RuleAmount from)
    {
        var equipment = leg.Type.Equipment.Split('/')[0].ToUpperInvariant();
        var cell = leg.TypeCell(nameof(AircraftType.Equipment));
        var level = Words.Amount(leg.Plan.Profile.Highest);
        return equipment.Length == 0
            ? ruling.NotChecked(from,
                $"at {level} distance measuring or area navigation is asked for, and the flight-plan equipment of {leg.Type.Name} is not given", cell)
            : equipment.IndexOfAny(['D', 'G', 'R', 'I', 'C']) >= 0 || equipment.IndexOfAny(['S', 'O']) < 0
            ? ruling.Pass($"At {level} {leg.Type.Name} has distance measuring or area navigation, or does not navigate by VOR.", from, cell)
            : ruling.Trips(from, $"At {level}, from {Words.Amount(from.Value, "ft")} on, {leg.Type.Name} needs distance measuring or area navigation, and its flight-plan equipment has none (D, G or R).", cell, leg.Cell(nameof(Leg.Level)));
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
