namespace Batch.Flight.Plan;

/// <summary>
/// The flight of a leg at its level: the level the dispatcher wrote, lowered where the leg is too short for it; or, for <c>auto</c>, the usable level that
/// burns least.
/// </summary>
/// <param name="context">The week's context.</param>
/// <param name="setup">The leg.</param>
/// <param name="near">The level at which the same leg was flown with other fuel; null where it was not.</param>
internal sealed class LevelFlight(PlanningContext context, LegSetup setup, Feet? near = null)
{
    private Feet? _level = near;
    private bool _isEstimate;
    private string _note = "";
    private readonly Feet? _ceiling = setup.AutomaticCeiling(setup.Route, Feet.Max(setup.From.Elevation, setup.To.Elevation));

    private string Oxygen =>
        _ceiling is { } ceiling && _ceiling != setup.Ceiling ? $", those above {ProfileTrack.Altitude(ceiling.Value)} left out since no oxygen is aboard" : "";

    /// <summary>What was decided about the level, as sentences.</summary>
    public IEnumerable<string> Notes => _note.Length > 0 ? [_note] : [];

    /// <summary>The flight.</summary>
    /// <param name="takeoffWeight">Weight at takeoff.</param>
    /// <param name="choice">How the level is chosen.</param>
    /// <param name="mayUseTableEdge">Whether a query outside a table is answered at its edge.</param>
    public ProfileResult Fly(Pounds takeoffWeight, LevelChoice choice, bool mayUseTableEdge)
    {
        // The level of the same leg with other fuel may be too high with this one: then it is looked for at once.
        if (_level is { } kept && choice != LevelChoice.Flown && ProfileFlyer.Fly(
            Request(kept, takeoffWeight, mayUseTableEdge)) is var flown && (flown is ProfileResult.Flown || choice == LevelChoice.Kept)) return flown;
        var result = setup.Level is { } level
            ? LevelFinder.FlyHighest(Request(level, takeoffWeight, mayUseTableEdge), setup.Rules, out _note, _level)
            : CheapestLevel.Fly(Request(Feet.Zero, takeoffWeight, mayUseTableEdge), setup.Rules, _ceiling, _isEstimate ? null : _level, choice, out _note);
        if (result is not ProfileResult.Flown { Profile: var profile }) return result;
        _level = profile.Level;
        _isEstimate = choice == LevelChoice.Estimated;
        if (setup.Level is null) _note = _note.Length > 0
            ? $"Level auto: {_note}"
            : $"Level auto: {ProfileTrack.Altitude(profile.Level.Value)} burns least of the usable levels{Oxygen}.";
        return result;
    }

    /// <summary>An estimate of what it burns to carry more at the level [lb]; zero where none can be made.</summary>
    /// <param name="more">What is carried more.</param>
    /// <param name="takeoffWeight">Weight at takeoff without it.</param>
    public Pounds BurnOf(Pounds more, Pounds takeoffWeight) =>
        more != Pounds.Zero && _level is { } level
        && LevelEstimate.BurnLb(Request(level, takeoffWeight, mayUseTableEdge: true), level) is { } without and < double.PositiveInfinity
        && LevelEstimate.BurnLb(Request(level, takeoffWeight + more, mayUseTableEdge: true), level) is { } with and < double.PositiveInfinity
            ? new Pounds((with - without) * (1 + setup.Aircraft.BurnBias))
            : Pounds.Zero;

    private ProfileRequest Request(Feet level, Pounds takeoffWeight, bool mayUseTableEdge) => new()
    {
        Route = setup.Route,
        Type = setup.Type,
        Level = level,
        Setting = setup.Setting,
        TakeoffWeight = takeoffWeight,
        Takeoff = setup.Takeoff,
        StartElevation = setup.From.Elevation,
        EndElevation = setup.To.Elevation,
        Air = context.Air,
        BurnBias = setup.Aircraft.BurnBias,
        MayUseTableEdge = mayUseTableEdge,
    };
}
