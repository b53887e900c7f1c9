using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Oxygen aboard against what the altitude asks for.</summary>
internal sealed class Oxygen : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-05";

    /// <inheritdoc/>
    public string Title => "Oxygen";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs =>
        ["the plan", "Types: pressurised", "Aircraft: oxygen", "Aircraft: quick-donning masks, high up in a pressurised cabin"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return Answer(leg, ruling);
        if (Mask(leg, ruling) is { } mask)
        {
            yield return mask;
        }
    }

    /// <summary>High up in a pressurised cabin: whether a pilot must wear a mask all the time; null where the rules ask for none.</summary>
    private static Finding? Mask(LegUnderCheck leg, Ruling ruling)
    {
        var level = leg.Plan.Profile.Highest;
        if (ruling.AmountOrNone("quick-donning masks carried above") is { } carried && level.Value > carried.Value + Ruling.Noise)
        {
            return Carried(leg, ruling, carried);
        }

        if (ruling.AmountOrNone("mask always above") is { } always && level.Value > always.Value + Ruling.Noise)
        {
            return ruling.Trips(always,
                $"At {Words.Amount(level)}, above {Words.Amount(always.Value, "ft")}, one pilot at the controls wears an oxygen mask all the time.",
                leg.Cell(nameof(Leg.Level)));
        }

        if (ruling.AmountOrNone("quick-donning masks above") is not { } above || level.Value <= above.Value + Ruling.Noise)
        {
            return null;
        }

        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.QuickDonningMasks));
        if (leg.Plan.Load.Pilots < 2 && ruling.Condition("quick-donning masks with two pilots") is { } two)
        {
            return ruling.Trips(two,
                $"At {Words.Amount(level)}, above {Words.Amount(above.Value, "ft")} and with one pilot, the pilot wears an oxygen mask all the time; quick-donning masks free two pilots only.",
                leg.Cell(nameof(Leg.Level)), leg.Cell(nameof(Leg.SecondPilot)));
        }

        return leg.Aircraft.QuickDonningMasks switch
        {
            null => ruling.NotChecked(above, $"whether every pilot's place of {leg.Aircraft.Registration} has a quick-donning mask is not given; without them one pilot wears a mask above {Words.Amount(above.Value, "ft")}", cell),
            true => ruling.Pass($"At {Words.Amount(level)} every pilot's place has a quick-donning mask.", above, cell),
            false => ruling.Trips(above,
                $"At {Words.Amount(level)}, above {Words.Amount(above.Value, "ft")} and without quick-donning masks, one pilot at the controls wears an oxygen mask all the time.",
                cell, leg.Cell(nameof(Leg.Level))),
        };
    }

    /// <summary>Whether quick-donning masks are aboard where the rules want them aboard.</summary>
    private static Finding Carried(LegUnderCheck leg, Ruling ruling, RuleAmount above)
    {
        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.QuickDonningMasks));
        var level = Words.Amount(leg.Plan.Profile.Highest);
        return leg.Aircraft.QuickDonningMasks switch
        {
            null => ruling.NotChecked(above, $"whether every pilot's place of {leg.Aircraft.Registration} has a quick-donning mask is not given; above {Words.Amount(above.Value, "ft")} each must have one", cell),
            true => ruling.Pass($"At {level} every pilot's place has a quick-donning mask.", above, cell),
            false => ruling.Trips(above,
                $"At {level}, above {Words.Amount(above.Value, "ft")}, every pilot's place must have a quick-donning mask, and {leg.Aircraft.Registration} has none.",
                cell, leg.Cell(nameof(Leg.Level))),
        };
    }

    private static Finding Answer(LegUnderCheck leg, Ruling ruling)
    {
        // What is asked of masks is another answer: the supply rests on its own paragraphs.
        var by = ruling.AmountOrNone("pilots after a cabin failure")
            ?? ruling.AmountOrNone("everybody after a cabin failure")
            ?? ruling.AmountOrNone("crew from");
        var load = leg.Plan.Load;
        var needs = (leg.Type.Pressurised == true ? AfterCabinFailure(leg, ruling) : WithoutPressure(leg, ruling))
            .Where(need => need.Time > Duration.Zero && need.Persons > 0).ToImmutableArray();
        if (needs.IsEmpty)
        {
            return ruling.Pass($"At {Words.Amount(leg.Plan.Profile.Highest)} no oxygen is asked for.", by);
        }

        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.Oxygen));
        var minutes = needs.Sum(need => need.Persons * need.Time.TotalMinutes) / Math.Max(load.Pilots + load.Passengers, 1);
        var parts = Words.List(needs.Select(need => $"{Words.Time(need.Time)} for {(need.IsPilots ? Words.Count(need.Persons, "pilot", "pilots") : Words.Count(need.Persons, "passenger", "passengers"))}"));
        var missing = $"how long the oxygen of {leg.Aircraft.Registration} lasts is not given, and {parts} are needed";
        return leg.Aircraft.Oxygen is { } supply
            ? ruling.AtLeast("Oxygen aboard, shared by all,", supply.TotalMinutes, minutes, "min", $"needed ({parts})", by, cell, leg.Cell(nameof(Leg.Level)))
            : by is { } rule
            ? ruling.NotChecked(rule, missing, cell)
            : ruling.NotChecked(missing, cell);
    }

    /// <summary>Not pressurised: the crew after a time in a band and always above it, the passengers in part and above a higher altitude all.</summary>
    private static IEnumerable<Need> WithoutPressure(LegUnderCheck leg, Ruling ruling)
    {
        var profile = leg.Plan.Profile;
        var free = Duration.FromMinutes(ruling.Amount("time free in the band").Value);
        var band = ruling.Amount("crew from").Value;
        var always = ruling.Amount("crew always above").Value;
        var high = ruling.Amount("everybody above").Value;
        var pilots = leg.Plan.Load.Pilots;
        var crew = ruling.Condition("required pilots only") is not null && leg.Type.RequiredPilots is { } required ? Math.Min(required, pilots) : pilots;
        var above = TimeAbove.Between(profile, high, double.PositiveInfinity);
        return
        [
            new(Positive(TimeAbove.Between(profile, band, always) - free) + TimeAbove.Between(profile, always, double.PositiveInfinity), crew, IsPilots: true),
            new(above, pilots - crew, IsPilots: true),
            new(above, leg.Plan.Load.Passengers),
            .. InTheBand(leg, ruling, band, high),
        ];
    }

    /// <summary>The share of the passengers below the altitude from which all need it; it comes on top of what is needed above.</summary>
    private static IEnumerable<Need> InTheBand(LegUnderCheck leg, Ruling ruling, double band, double high) =>
        ruling.AmountOrNone("share of passengers in the band") is { } share
        ? [new(Positive(TimeAbove.Between(leg.Plan.Profile, band, high) - Duration.FromMinutes(ruling.Amount("time free in the band").Value)),
            (int)Math.Ceiling(leg.Plan.Load.Passengers * share.Value / 100))]
        : [];

    /// <summary>Pressurised: what a failure of the cabin asks for.</summary>
    private static IEnumerable<Need> AfterCabinFailure(LegUnderCheck leg, Ruling ruling)
    {
        var level = leg.Plan.Profile.Highest.Value;
        var load = leg.Plan.Load;
        if (ruling.AmountOrNone("pilots after a cabin failure") is not { } pilots)
        {
            var spare = Duration.FromMinutes(ruling.Amount("everybody after a cabin failure").Value);
            return level > ruling.Amount("cabin failure matters above").Value ? [new(spare, load.Pilots, IsPilots: true), new(spare, load.Passengers)] : [];
        }

        var band = ruling.Amount("crew from").Value;
        if (level <= band)
        {
            return [];
        }

        // An unknown ceiling counts as high, the stricter.
        var isHigh = ruling.AmountOrNone("certified high above") is { } above && !(leg.Type.Ceiling?.Value <= above.Value);
        var high = ruling.Amount("everybody above").Value;
        return
        [
            new(Duration.FromMinutes((isHigh ? ruling.Amount("pilots after a cabin failure, certified high") : pilots).Value), load.Pilots, IsPilots: true),
            .. level > high
                ? [new Need(Duration.FromMinutes(ruling.Amount("passengers after a cabin failure").Value), load.Passengers)]
                : ImmutableArray<Need>.Empty,
            .. InTheBand(leg, ruling, band, high),
        ];
    }

    private static Duration Positive(Duration time) => Duration.Max(time, Duration.Zero);

    private readonly record struct Need(Duration Time, int Persons, bool IsPilots = false);
}
