using System.Globalization;
using Batch.Flight.Fleet;

namespace Batch.Flight.Week;

/// <summary>A week that turns out worse than planned: what is added to weather, weights and times before everything is planned again.</summary>
public sealed record Scenario
{
    /// <summary>Name, one word or a few joined by hyphens.</summary>
    public required string Name { get; init; }

    /// <summary>What it says, such as <c>temperature 10 °C higher</c>.</summary>
    public required string Text { get; init; }

    /// <summary>Added to every temperature, known or assumed [°C].</summary>
    public double WarmerC { get; init; }

    /// <summary>Headwind added on every course in flight; not at runways, where it would help.</summary>
    public Knots Headwind { get; init; }

    /// <summary>What the weight of every person is multiplied by, bags not; pilots counted in the empty weight stay as weighed.</summary>
    public double PersonFactor { get; init; } = 1;

    /// <summary>How much later every leg leaves.</summary>
    public Duration Later { get; init; }

    /// <summary>Nothing added.</summary>
    public static Scenario AsPlanned { get; } = new() { Name = "as-planned", Text = "as planned" };

    /// <summary>The scenarios that the program knows; their amounts are common practice, no source.</summary>
    public static ImmutableArray<Scenario> BuiltIn { get; } =
    [
        new() { Name = "hot", Text = "temperature 10 °C higher", WarmerC = 10 },
        new() { Name = "headwind", Text = "headwind 20 kt stronger on every course", Headwind = new Knots(20) },
        new() { Name = "heavy", Text = "every person 10 % heavier", PersonFactor = 1.1 },
        new() { Name = "late", Text = "every leg one hour later", Later = Duration.FromHours(1) },
    ];

    /// <summary>
    /// The scenarios of an operator: those that the program knows, one of the operator's own in place of one of the same name, then the operator's others.
    /// </summary>
    /// <param name="house">The operator.</param>
    public static ImmutableArray<Scenario> Of(Operator house)
    {
        bool IsNamed(Scenario one, Scenario other) => string.Equals(one.Name, other.Name, StringComparison.OrdinalIgnoreCase);
        return
        [
            .. BuiltIn.Select(known => house.Scenarios.FirstOrDefault(own => IsNamed(own, known)) ?? known),
            .. house.Scenarios.Where(own => !BuiltIn.Any(known => IsNamed(own, known))),
        ];
    }

    /// <summary>A scenario that says what it adds.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="warmerC">Added to every temperature [°C]; below zero colder.</param>
    /// <param name="headwind">Headwind added on every course.</param>
    /// <param name="heavierPercent">How much heavier every person is [%].</param>
    /// <param name="later">How much later every leg leaves.</param>
    public static Scenario Made(string name, double warmerC, Knots headwind, double heavierPercent, Duration later)
    {
        string[] parts =
        [
            warmerC == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"temperature {Math.Abs(warmerC):0.#} °C {(warmerC > 0 ? "higher" : "lower")}"),
            headwind.Value == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"headwind {headwind.Value:0.#} kt stronger on every course"),
            heavierPercent == 0
                ? ""
                : string.Create(CultureInfo.InvariantCulture, $"every person {Math.Abs(heavierPercent):0.#} % {(heavierPercent > 0 ? "heavier" : "lighter")}"),
            later == Duration.Zero ? "" : string.Create(CultureInfo.InvariantCulture, $"every leg {later.TotalMinutes:0} min later"),
        ];
        return new Scenario
        {
            Name = name,
            Text = string.Join(", ", parts.Where(part => part.Length > 0)),
            WarmerC = warmerC,
            Headwind = headwind,
            PersonFactor = 1 + (heavierPercent / 100),
            Later = later,
        };
    }

    /// <summary>The week with the scenario's weights and times; the weather is the planner's.</summary>
    /// <param name="week">The week.</param>
    public OperatorWeek ApplyTo(OperatorWeek week)
    {
        var changed = week;
        if (PersonFactor != 1)
        {
            changed = changed with
            {
                Manifest = [.. changed.Manifest.Select(line => line with { Weight = line.Weight * PersonFactor })],
                Crew = changed.Crew.SetItems(
                    changed.Crew.Select(pair => KeyValuePair.Create(pair.Key, pair.Value with { Weight = pair.Value.Weight * PersonFactor }))),
            };
        }

        return Later == Duration.Zero
            ? changed
            : changed with { Legs = [.. changed.Legs.Select(leg => Moved(leg, week.Airports.GetValueOrDefault(leg.From)))] };
    }

    // Written by the clock of the airport, or in UTC; a time that the clock leaves out is neither.
    private Leg Moved(Leg leg, Airport? from)
    {
        var at = leg.OffBlocks + Later;
        var zones = new[] { from?.Zone, DateTimeZone.Utc }.OfType<DateTimeZone>();
        var written = zones.FirstOrDefault(zone => leg.OffBlocks.InZone(zone).LocalDateTime == leg.OffBlocksLocal);
        return leg with
        {
            OffBlocks = at,
            OffBlocksLocal = written is null
            ? leg.OffBlocksLocal.PlusTicks(Later.BclCompatibleTicks)
            : at.InZone(written).LocalDateTime
        };
    }
}
