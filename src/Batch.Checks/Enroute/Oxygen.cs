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
    public ImmutableArray<string> Needs => ["the plan", "Types: pressurised", "Aircraft: oxygen", "Aircraft: quick-donning masks, high up in a pressurised cabin"];

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
        if (ruling.AmountOrNone("mask always above") is { } always && level.Value > always.Value + Ruling.Noise)
        {
            return ruling.Trips(always, $"At {Words.Amount(level)}, above {Words.Amount(always.Value, "ft")}, one pilot at the controls wears an oxygen mask all the time.", leg.Cell(nameof(Leg.Level)));
        }

        if (ruling.AmountOrNone("quick-donning masks above") is not { } above || level.Value <= above.Value + Ruling.Noise)
        {
            return null;
        }

        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.QuickDonningMasks));
        if (leg.Plan.Load.Pilots < 2 && ruling.Condition("quick-donning masks with two pilots") is { } two)
        {
            return ruling.Trips(two, $"At {Words.Amount(level)}, above {Words.Amount(above.Value, "ft")} and with one pilot, the pilot wears an oxygen mask all the time; quick-donning masks free two pilots only.", leg.Cell(nameof(Leg.Level)), leg.Cell(nameof(Leg.SecondPilot)));
        }

        return leg.Aircraft.QuickDonningMasks switch
        {
            null => ruling.NotChecked(above, $"whether every pilot's place of {leg.Aircraft.Registration} has a quick-donning mask is not given; without them one pilot wears a mask above {Words.Amount(above.Value, "ft")}", cell),
            true => ruling.Pass($"At {Words.Amount(level)} every pilot's place has a quick-donning mask.", above, cell),
            false => ruling.Trips(above, $"At {Words.Amount(level)}, above {Words.Amount(above.Value, "ft")} and without quick-donning masks, one pilot at the controls wears an oxygen mask all the time.", cell, leg.Cell(nameof(Leg.Level))),
        };
    }

    private static Finding Answer(LegUnderCheck leg, Ruling ruling)
    {
        // What is asked of masks is another answer: the supply rests on its own paragraphs.
        var by = ruling.AmountOrNone("pilots after a cabin failure") ?? ruling.AmountOrNone("everybody after a cabin failure") ?? ruling.AmountOrNone("crew from");
        var need = leg.Type.Pressurised == true ? AfterCabinFailure(leg, ruling) : WithoutPressure(leg, ruling);
        if (need.Pilots <= Duration.Zero && need.Passengers <= Duration.Zero)
        {
            return ruling.Pass($"At {Words.Amount(leg.Plan.Profile.Highest)} no oxygen is asked for.", by);
        }

        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.Oxygen));
        var persons = leg.Plan.Load.Pilots + leg.Plan.Load.Passengers;
        var minutes = ((leg.Plan.Load.Pilots * need.Pilots.TotalMinutes) + (need.Persons * need.Passengers.TotalMinutes)) / Math.Max(persons, 1);
        var parts = $"{Words.Time(need.Pilots)} for {Words.Count(leg.Plan.Load.Pilots, "pilot", "pilots")}"
            + (need.Persons > 0 && need.Passengers > Duration.Zero ? $" and {Words.Time(need.Passengers)} for {Words.Count(need.Persons, "passenger", "passengers")}" : "");
        var missing = $"how long the oxygen of {leg.Aircraft.Registration} lasts is not given, and {parts} are needed";
        return leg.Aircraft.Oxygen is { } supply
            ? ruling.AtLeast("Oxygen aboard, shared by all,", supply.TotalMinutes, minutes, "min", $"needed ({parts})", by, cell, leg.Cell(nameof(Leg.Level)))
            : by is { } rule
            ? ruling.NotChecked(rule, missing, cell)
            : ruling.NotChecked(missing, cell);
    }

    /// <summary>Not pressurised: the crew after a time in a band and always above it, the passengers in part and above a higher altitude all.</summary>
    private static Need WithoutPressure(LegUnderCheck leg, Ruling ruling)
    {
        var profile = leg.Plan.Profile;
        var free = Duration.FromMinutes(ruling.Amount("time free in the band").Value);
        var band = ruling.Amount("crew from").Value;
        var always = ruling.Amount("crew always above").Value;
        var pilots = Positive(TimeAbove.Between(profile, band, always) - free) + TimeAbove.Between(profile, always, double.PositiveInfinity);
        var everybodyAbove = ruling.Amount("everybody above").Value;
        var everybody = TimeAbove.Between(profile, everybodyAbove, double.PositiveInfinity);
        if (everybody > Duration.Zero || ruling.AmountOrNone("share of passengers in the band") is not { } share)
        {
            return new Need(pilots, everybody, leg.Plan.Load.Passengers);
        }

        return new Need(pilots, Positive(TimeAbove.Between(profile, band, everybodyAbove) - free), (int)Math.Ceiling(leg.Plan.Load.Passengers * share.Value / 100));
    }

    /// <summary>Pressurised: what a failure of the cabin asks for.</summary>
    private static Need AfterCabinFailure(LegUnderCheck leg, Ruling ruling)
    {
        var level = leg.Plan.Profile.Highest.Value;
        if (ruling.AmountOrNone("pilots after a cabin failure") is not { } pilots)
        {
            var spare = ruling.Amount("everybody after a cabin failure");
            return level > ruling.Amount("cabin failure matters above").Value ? new Need(Duration.FromMinutes(spare.Value), Duration.FromMinutes(spare.Value), leg.Plan.Load.Passengers) : default;
        }

        var band = ruling.Amount("crew from").Value;
        if (level <= band)
        {
            return default;
        }

        var high = ruling.Amount("everybody above").Value;
        return level > high
            ? new Need(Duration.FromMinutes(pilots.Value), Duration.FromMinutes(ruling.Amount("passengers after a cabin failure").Value), leg.Plan.Load.Passengers)
            : new Need(
                Duration.FromMinutes(pilots.Value),
                Positive(TimeAbove.Between(leg.Plan.Profile, band, high) - Duration.FromMinutes(ruling.Amount("time free in the band").Value)),
                (int)Math.Ceiling(leg.Plan.Load.Passengers * ruling.Amount("share of passengers in the band").Value / 100));
    }

    private static Duration Positive(Duration time) => Duration.Max(time, Duration.Zero);

    private readonly record struct Need(Duration Pilots, Duration Passengers, int Persons);
}
