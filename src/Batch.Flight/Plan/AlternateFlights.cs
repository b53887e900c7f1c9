using Batch.Flight.Fleet;
using Batch.Flight.Route;

namespace Batch.Flight.Plan;

/// <summary>
/// The flights from the destination to the filed alternates: the missed approach (the type's approach allowance once more), then climb, cruise and descent
/// direct to the alternate, at the usable level that burns least at about that weight (<see cref="AlternateLevels"/>). Computed in each round of the fuel
/// iteration at that round's landing weight.
/// </summary>
internal sealed class AlternateFlights
{
    private readonly PlanningContext _context;
    private readonly LegSetup _setup;
    private readonly FlownRoute[] _routes;
    private readonly Feet?[] _levels;
    private readonly string[] _notes;

    /// <summary>Makes the flights ready.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="setup">The leg.</param>
    /// <param name="near">The levels when the same leg was worked out from other fuel, in the order filed; empty where it was not.</param>
    public AlternateFlights(PlanningContext context, LegSetup setup, ImmutableArray<Feet> near)
    {
        _context = context;
        _setup = setup;
        _routes =
        [
            .. setup.Alternates.Select(
                alternate => RouteReader.Resolve(context.Navigation, setup.To, alternate, "", setup.Date, null) is RouteResult.Resolved { Route: var route }
                ? route
                : throw new System.Diagnostics.UnreachableException("A direct route between two airports always resolves.")),
        ];
        _levels = [.. _routes.Select((_, i) => i < near.Length ? near[i] : (Feet?)null)];
        _notes = new string[_routes.Length];
        Array.Fill(_notes, "");
    }

    /// <summary>The flights of the last round, in the order filed.</summary>
    public ImmutableArray<AlternatePlan> Plans { get; private set; } = [];

    /// <summary>Values taken at a table's edge in the last round, as sentences.</summary>
    public ImmutableArray<string> TableEdges { get; private set; } = [];

    /// <summary>What was decided about the levels in the last round, as sentences.</summary>
    public IEnumerable<string> Notes => _notes.Where(note => note.Length > 0);

    /// <summary>The one that needs most fuel; null where no alternate is filed.</summary>
    public AlternatePlan? Farthest => Plans.FirstOrDefault(plan => plan.IsFarthest);

    /// <summary>Flies to every alternate.</summary>
    /// <param name="landingWeight">Weight at the destination.</param>
    /// <param name="at">When the missed approach begins.</param>
    /// <param name="choice">How the levels are chosen.</param>
    /// <param name="mayUseTableEdge">Whether a query outside a table is answered at its edge.</param>
    /// <returns>Why an alternate cannot be reached; null where all can.</returns>
    public FuelOutcome.NotFlyable? Fly(Pounds landingWeight, Instant at, LevelChoice choice, bool mayUseTableEdge)
    {
        var edges = ImmutableArray.CreateBuilder<string>();
        var plans = ImmutableArray.CreateBuilder<AlternatePlan>(_routes.Length);
        for (var i = 0; i < _routes.Length; i++)
        {
            var alternate = _setup.Alternates[i];
            if (alternate.Ident == _setup.To.Ident) return new FuelOutcome.NotFlyable($"The alternate {alternate.Ident} is the destination itself.", "");
            // The burn bias holds for all fuel.
            var missedApproach = (_setup.Type.ApproachFuel ?? Pounds.Zero) * (1 + _setup.Aircraft.BurnBias);
            var missedApproachTime = _setup.Type.ApproachTime ?? Duration.Zero;
            var request = new ProfileRequest
            {
                Route = _routes[i],
                Type = _setup.Type,
                Level = _levels[i] ?? Feet.Zero,
                Setting = _setup.Setting,
                TakeoffWeight = landingWeight - missedApproach,
                Takeoff = at + missedApproachTime,
                StartElevation = _setup.To.Elevation,
                EndElevation = alternate.Elevation,
                Air = _context.Air,
                BurnBias = _setup.Aircraft.BurnBias,
                MayUseTableEdge = mayUseTableEdge,
            };
            var flown = _levels[i] is null || choice == LevelChoice.Flown ? Cheapest(request, alternate, _levels[i], out _notes[i]) : ProfileFlyer.Fly(request);
            // The level with other fuel may be too high with this one.
            if (choice == LevelChoice.Estimated && flown is not ProfileResult.Flown) flown = Cheapest(request, alternate, null, out _notes[i]);
            if (_notes[i].Length > 0 && !_notes[i].StartsWith("To ", StringComparison.Ordinal)) _notes[i] = $"To {alternate.Ident}: {_notes[i]}";
            if (flown is not ProfileResult.Flown { Profile: var profile })
                return new FuelOutcome.NotFlyable(
                    $"The alternate {alternate.Ident} cannot be reached: {Why(flown)}", flown is ProfileResult.NotFlyable { Where: var where }
                        ? where
                        : "")
                { IsByWeight = flown is ProfileResult.NotFlyable { IsByWeight: true } };
            _levels[i] = profile.Level;
            edges.AddRange(profile.TableEdges);
            plans.Add(new AlternatePlan
            {
                Airport = alternate.Ident,
                Distance = profile.Distance,
                Level = profile.Level,
                Time = missedApproachTime + profile.Time,
                Fuel = profile.TripFuel + missedApproach,
                MagneticCourse = _routes[i].Segments[0].MagneticCourse,
                IsFarthest = false,
            });
        }

        var most = plans.Count == 0 ? Pounds.Zero : plans.Max(plan => plan.Fuel);
        if (plans.FirstOrDefault(plan => plan.Fuel == most) is { } farthest) plans[plans.IndexOf(farthest)] = farthest with { IsFarthest = true };
        Plans = plans.DrainToImmutable();
        TableEdges = edges.ToImmutable();
        return null;
    }

    private ProfileResult Cheapest(ProfileRequest request, Airport alternate, Feet? known, out string note)
    {
        var ceiling = _setup.AutomaticCeiling(request.Route, Feet.Max(_setup.To.Elevation, alternate.Elevation));
        if (_context.AlternateLevels.Of(request, _setup.To, alternate, _setup.Rules, ceiling) is { } found)
        {
            note = found.Note;
            if (ProfileFlyer.Fly(request with { Level = found.Level }) is ProfileResult.Flown flown) return flown;
        }

        return CheapestLevel.Fly(request, _setup.Rules, ceiling, known, LevelChoice.Flown, out note);
    }

    private static string Why(ProfileResult result) => result switch
    {
        ProfileResult.NotFlyable notFlyable => notFlyable.Why,
        ProfileResult.TooShort => "no level leaves two minutes of cruise on the way.",
        _ => "",
    };
}
