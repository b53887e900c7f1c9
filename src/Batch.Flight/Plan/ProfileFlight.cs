using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>One flying of a route: climb, levels, descent put together. Used once.</summary>
internal sealed class ProfileFlight
{
    private const double NoticeableFt = 100;

    /// <summary>The lists of the last flight on this thread, empty: some twenty-five flights are flown for one leg, and each would grow its own.</summary>
    [ThreadStatic]
    private static (List<ProfileSlice> Slices, List<ProfileSlice> Downward)? _spare;

    private readonly ProfileRequest _request;
    private readonly ProfileTrack _track;
    private readonly ProfileTableEdges _edges;
    private readonly ProfileClimb _climb;
    private readonly ProfileCruise _cruise;
    private readonly ProfileDescent _descent;
    private readonly double _burnFactor;
    private readonly List<ProfileSlice> _slices;
    private readonly List<ProfileSlice> _downward;
    private readonly List<(int Segment, double LevelFt)> _steps = [];
    private readonly List<string> _notes = [];

    public ProfileFlight(ProfileRequest request, PerformanceTable climb, PerformanceTable cruise, PerformanceTable descent)
    {
        (_slices, _downward) = _spare ?? (new(64), new(32));
        _spare = null;
        _request = request;
        _track = new ProfileTrack(request.Route, request.Air, request.Takeoff);
        _edges = new ProfileTableEdges(request.MayUseTableEdge);
        _burnFactor = 1 + request.BurnBias;
        _climb = new ProfileClimb(_track, climb, _edges, _burnFactor);
        _cruise = new ProfileCruise(_track, cruise, _edges, _burnFactor);
        _descent = new ProfileDescent(_track, descent, _edges, _burnFactor);
    }

    // Below sea level the cumulative tables stand still, unless they begin there.
    private double StartFt => Math.Max(_request.StartElevation.Value, _climb.FloorFt);

    private double EndFt => Math.Max(_request.EndElevation.Value, _descent.FloorFt);

    private double LastLevelFt => _steps.Count > 0 ? _steps[^1].LevelFt : _request.Level.Value;

    public ProfileResult Fly()
    {
        var result = FlySteps();
        _slices.Clear();
        _downward.Clear();
        _spare = (_slices, _downward);
        return result;
    }

    private ProfileResult FlySteps()
    {
        FindSteps();
        Below(_request.StartElevation.Value, StartFt, "departure", "climb");
        Below(_request.EndElevation.Value, EndFt, "destination", "descent");
        while (true)
        {
            var result = FlyLevels();
            if (result is not ProfileResult.TooShort || _steps.Count == 0) return result;
            var (segment, levelFt) = _steps[^1];
            _steps.RemoveAt(_steps.Count - 1);
            _notes.Add(
                $"{ProfileTrack.Altitude(levelFt)} from {_track.Segments[segment].From.Ident} was not flown; it leaves less than two minutes of cruise.");
        }
    }

    // A few feet below the sea are not worth a sentence.
    private void Below(double elevationFt, double tableFt, string end, string what)
    {
        if (tableFt - elevationFt > NoticeableFt)
            _notes.Add(FormattableString.Invariant(
                $"The {end} lies {tableFt - elevationFt:#,##0} ft below where the {what} table begins: that part of the {what} takes no time and fuel here."));
    }

    private void FindSteps()
    {
        var levelFt = _request.Level.Value;
        if (_track.Segments[0].LevelFromHere is { } first && first.Value != levelFt)
            _notes.Add($"{ProfileTrack.Altitude(first.Value)} from {_track.Segments[0].From.Ident} was not flown; the level planned is {ProfileTrack.Altitude(levelFt)}.");
        for (var segment = 1; segment <= _track.Last; segment++)
        {
            if (_track.Segments[segment].LevelFromHere is not { } asked) continue;
            if (asked.Value > levelFt) _steps.Add((segment, levelFt = asked.Value));
            else if (asked.Value < levelFt)
                _notes.Add($"{ProfileTrack.Altitude(asked.Value)} from {_track.Segments[segment].From.Ident} was not flown; it lies below {ProfileTrack.Altitude(levelFt)}.");
        }
    }

    private ProfileResult FlyLevels()
    {
        _slices.Clear();
        var state = new ProfileState { WeightLb = _request.TakeoffWeight.Value };
        if (_climb.Fly(ref state, StartFt, _request.Level.Value, state.WeightLb, _slices) is { } inClimb) return Result(inClimb);
        var topOfClimb = state;
        var climbSlices = _slices.Count;

        // A first arrival in still air, for the winds of the descent.
        var elevationFt = EndFt;
        if (_descent.StillAir(LastLevelFt, elevationFt, out var descentHours, out var descentNm) is { } noDescent)
            return Result(new ProfileTrouble(noDescent, _track.Where(_track.Last, _track.LengthNm, LastLevelFt)));
        if (StillAirspeed(topOfClimb, out var airspeedKt) is { } outside) return Result(outside);
        var endHours = topOfClimb.Hours + Math.Max(0, _track.LengthNm - topOfClimb.AlongNm - descentNm) / airspeedKt + descentHours;

        double startNm = 0;
        for (var round = 0; round < 2; round++)
        {
            _downward.Clear();
            if (_descent.Fly(LastLevelFt, elevationFt, endHours, _downward) is { } inDescent) return Result(inDescent);
            var foundNm = _downward.Count > 0 ? _downward[^1].StartNm : _track.LengthNm;
            if (foundNm < topOfClimb.AlongNm) return new ProfileResult.TooShort((foundNm - topOfClimb.AlongNm) / airspeedKt * 60);
            if (round == 0 || Math.Abs(foundNm - startNm) > ProfileTrack.SamePlaceNm)
            {
                startNm = foundNm;
                state = topOfClimb;
                _slices.RemoveRange(climbSlices, _slices.Count - climbSlices);
                if (FlyToDescent(ref state, startNm, out var cruiseHours) is { } inCruise) return Result(inCruise);
                if (cruiseHours * 60 < ProfileFlyer.LeastCruiseMinutes) return new ProfileResult.TooShort(cruiseHours * 60);
            }

            // The second round finds the same descent where the air is the same at both arrivals.
            var downHours = Hours(_downward);
            var foundHours = state.Hours + downHours;
            if (!_track.AirChangesBetween(Math.Max(0, Math.Min(endHours, foundHours) - downHours), Math.Max(endHours, foundHours))) break;
            endHours = foundHours;
        }

        if (_cruise.FlowAt(state, LastLevelFt, out var flow) is { } noFlow)
            return Result(new ProfileTrouble(noFlow, _track.Where(state.Segment, state.AlongNm, LastLevelFt)));
        return new ProfileResult.Flown(Profile(topOfClimb, state, flow));
    }

    // Level by level up to the top of descent; the hours are those at the last level.
    private ProfileTrouble? FlyToDescent(ref ProfileState state, double toNm, out double cruiseHours)
    {
        cruiseHours = 0;
        var levelFt = _request.Level.Value;
        foreach (var (segment, nextFt) in _steps)
        {
            var stepNm = _track.StartNm(segment);
            if (stepNm >= toNm) return null;
            if (_cruise.Fly(ref state, stepNm, levelFt, _slices) is { } before) return before;
            if (_climb.Fly(ref state, levelFt, nextFt, state.WeightLb, _slices) is { } inClimb) return inClimb;
            levelFt = nextFt;
        }

        if (state.AlongNm >= toNm) return null;
        var startHours = state.Hours;
        var trouble = _cruise.Fly(ref state, toNm, levelFt, _slices);
        cruiseHours = state.Hours - startHours;
        return trouble;
    }

    private ProfileTrouble? StillAirspeed(ProfileState state, out double airspeedKt)
    {
        var levelFt = _request.Level.Value;
        var air = _track.Air(_track.At(state.Segment, state.AlongNm), levelFt, state.Hours);
        var wrong = _cruise.Read(state.WeightLb, StandardAtmosphere.DeviationK(air.Temperature, _request.Level), levelFt, out airspeedKt, out _);
        if (wrong is null && !(airspeedKt > 0)) wrong = "The cruise table gives no airspeed.";
        return wrong is null ? null : new ProfileTrouble(wrong, _track.Where(state.Segment, state.AlongNm, levelFt));
    }

    private FlightProfile Profile(ProfileState topOfClimb, ProfileState topOfDescent, double flowLbPerHour)
    {
        for (var index = _downward.Count - 1; index >= 0; index--) _slices.Add(_downward[index]);
        AddApproach(topOfDescent.Hours + Hours(_downward));
        double hours = 0, groundNm = 0, airNm = 0, burnLb = 0;
        foreach (var slice in _slices)
        {
            hours += slice.Hours;
            groundNm += slice.GroundNm;
            airNm += slice.AirNm;
            burnLb += slice.BurnLb;
        }

        return new FlightProfile
        {
            Level = _request.Level,
            Setting = _request.Setting,
            TakeoffWeight = _request.TakeoffWeight,
            Slices = [.. _slices],
            TopOfClimb = Point(topOfClimb, _request.Level.Value),
            TopOfDescent = Point(topOfDescent, LastLevelFt),
            Distance = new NauticalMiles(groundNm),
            AirDistance = new NauticalMiles(airNm),
            Time = Duration.FromHours(hours),
            TripFuel = new Pounds(burnLb),
            CruiseFlow = new PoundsPerHour(flowLbPerHour),
            TableEdges = _edges.Sentences,
            Notes = [.. _notes],
        };
    }

    private void AddApproach(double hours)
    {
        var time = _request.Type.ApproachTime ?? Duration.Zero;
        var fuel = _request.Type.ApproachFuel ?? Pounds.Zero;
        if (time == Duration.Zero && fuel == Pounds.Zero) return;
        var elevationFt = EndFt;
        var end = _track.At(_track.Last, _track.LengthNm);
        _slices.Add(new ProfileSlice
        {
            Phase = FlightPhase.Approach,
            Segment = _track.Last,
            StartNm = _track.LengthNm,
            EndNm = _track.LengthNm,
            StartFt = elevationFt,
            EndFt = elevationFt,
            Hours = time.TotalHours,
            BurnLb = fuel.Value * _burnFactor,
            AirNm = 0,
            Air = _track.Air(end, elevationFt, hours),
            TrueAirspeedKt = 0,
            GroundSpeedKt = 0,
            TrueCourseDeg = end.AzimuthDeg,
            TrueHeadingDeg = end.AzimuthDeg,
        });
    }

    private ProfilePoint Point(ProfileState state, double altitudeFt) => new(
        new NauticalMiles(state.AlongNm), Duration.FromHours(state.Hours), _track.At(state.Segment, state.AlongNm).Point, new Feet(altitudeFt));

    private static double Hours(List<ProfileSlice> slices)
    {
        var hours = 0.0;
        foreach (var slice in slices) hours += slice.Hours;
        return hours;
    }

    private ProfileResult.NotFlyable Result(ProfileTrouble trouble) => new(trouble.Why, trouble.Where) { IsByWeight = _edges.IsByWeight };
}
