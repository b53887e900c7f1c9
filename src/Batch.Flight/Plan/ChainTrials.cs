namespace Batch.Flight.Plan;

/// <summary>Flies single legs of a chain with one amount of fuel or another; what was flown once is kept.</summary>
/// <param name="legs">Number of legs.</param>
/// <param name="source">The fuel a leg starts from, given what the leg before left (null where that is not known) and what must be left after landing.</param>
/// <param name="isSold">Whether the departure of a leg sells its fuel; null where not known.</param>
/// <param name="fly">Flies a leg; null where it cannot be flown or breaks down.</param>
internal sealed class ChainTrials(int legs, Func<int, Pounds?, FuelSource?> source, Func<int, bool?> isSold, Func<int, FuelSource, LegTrial?> fly)
{
    private readonly Dictionary<(double Before, double After, bool IsWanted), LegTrial?>[] _flown = [.. Enumerable.Range(0, legs)
        .Select(_ => new Dictionary<(double, double, bool), LegTrial?>())];

    /// <summary>Whether the departure of a leg sells its fuel; null where not known.</summary>
    /// <param name="leg">Index of the leg.</param>
    public bool? IsSold(int leg) => isSold(leg);

    /// <summary>A leg as it would be fuelled and flown.</summary>
    /// <param name="leg">Index of the leg.</param>
    /// <param name="before">Fuel that the leg before left; null where not known.</param>
    /// <param name="after">Fuel to be left on landing for later legs [lb].</param>
    public LegTrial? Fly(int leg, Pounds? before, Pounds after) =>
        source(leg, before) is { } start ? Kept(leg, (before?.Value ?? double.NaN, after.Value, false), start with { CarriedAfterLanding = after }) : null;

    /// <summary>A leg with just the fuel that it needs, whether or not fuel is sold.</summary>
    /// <param name="leg">Index of the leg.</param>
    /// <param name="after">Fuel to be left on landing for later legs [lb].</param>
    public LegTrial? Wanted(int leg, Pounds after) =>
        source(leg, null) is { } start
            ? Kept(leg, (0, after.Value, true), start with { Before = Pounds.Zero, IsBeforeKnown = true, IsTrial = true, CarriedAfterLanding = after })
            : null;

    private LegTrial? Kept(int leg, (double, double, bool) key, FuelSource from)
    {
        if (!_flown[leg].TryGetValue(key, out var trial)) _flown[leg].Add(key, trial = fly(leg, from));
        return trial;
    }
}
