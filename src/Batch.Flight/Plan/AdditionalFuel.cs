using System.Globalization;
using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// Additional fuel: what is missing at the worst point of the cruise to reach, after a loss of cabin pressure or the failure of one engine of several, the
/// airport of the book that needs least, to hold there 15 minutes at 1,500 ft and to land. ICAO Annex 6 Part I 4.3.6.3 f) 1) and AMC1 CAT.OP.MPA.181, from
/// memory; a single-engine aeroplane has the first failure only. After a loss of pressure the flight goes on at 10,000 ft, after an engine failure as high as
/// the cruise setting <see cref="OneEngine"/> reaches at that weight. Terrain under the way is not looked at.
/// </summary>
internal sealed class AdditionalFuel
{
    /// <summary>Name of the cruise setting that holds speed and flow with one engine stopped.</summary>
    public const string OneEngine = "one engine";

    /// <summary>Altitude to which a flight without cabin pressure descends, and above which its loss counts [ft].</summary>
    private const double UnpressurisedFt = 10_000;

    private readonly PlanningContext _context;
    private readonly LegSetup _setup;
    private readonly DiversionAirports? _airports;

    /// <summary>Makes the search ready.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="setup">The leg.</param>
    public AdditionalFuel(PlanningContext context, LegSetup setup)
    {
        _context = context;
        _setup = setup;
        if (setup.Planning.Fuel.AsksForAdditional) _airports = new DiversionAirports(context.Week, setup);
    }

    /// <summary>The amount.</summary>
    /// <param name="profile">The flight to the destination.</param>
    /// <param name="afterLanding">Contingency, alternate and final reserve: what the trip leaves.</param>
    public AdditionalAmount Of(FlightProfile profile, Pounds afterLanding)
    {
        if (_airports is null || _setup.Type.Tables.Descent is not { } descent) return AdditionalAmount.None;
        var type = _setup.Type;
        var points = ImmutableArray.CreateBuilder<CriticalPoint>();
        var assumptions = ImmutableArray.CreateBuilder<string>();
        var notes = ImmutableArray.CreateBuilder<string>();
        var edges = new ProfileTableEdges(_context.Week.Operator.MayUseTableEdge);
        FailurePoint[] all = [.. FailurePoint.Of(_setup, profile)];

        void Add(CriticalFailure failure, PerformanceTable cruise, IEnumerable<FailurePoint> from)
        {
            var flight = new DiversionFlight(_context, _setup, failure, cruise, descent, edges);
            if (Worst(flight, failure, cruise, from, profile, afterLanding, out var why) is { } worst) points.Add(worst);
            else assumptions.Add($"Additional fuel for {Words(failure)} is not computed: {why}");
        }

        FailurePoint[] high = [.. all.Where(point => point.AltitudeFt > UnpressurisedFt)];
        if (type.Pressurised == false) notes.Add($"No additional fuel for a loss of cabin pressure: {type.Name} is not pressurised.");
        else if (high.Length == 0) notes.Add("No additional fuel for a loss of cabin pressure: the cruise lies no higher than 10,000 ft.");
        else
        {
            if (type.Pressurised is null) assumptions.Add($"Whether {type.Name} is pressurised is not said: taken as pressurised for the additional fuel.");
            Add(CriticalFailure.CabinPressure, type.Tables.Cruise[profile.Setting], high);
        }

        if (type.Engines == 1) notes.Add($"No additional fuel for an engine failure: {type.Name} has one engine.");
        else if (type.Tables.Cruise.TryGetValue(OneEngine, out var oneEngine)) Add(CriticalFailure.Engine, oneEngine, all);
        else assumptions.Add($"Additional fuel for an engine failure is not computed: the Cruise sheet has no setting '{OneEngine}' for {type.Name}.");

        if (points.Count > 0 && type.Tables.Holding is null)
            assumptions.Add($"The Holding sheet has no rows for {type.Name}: holding fuel taken at cruise flow.");
        var most = points.Count == 0 ? 0 : Math.Max(0, points.Max(point => point.Shortfall.Value));
        return new AdditionalAmount(new Pounds(most), points.ToImmutable(), [.. assumptions, .. edges.Sentences], notes.ToImmutable());
    }

    private CriticalPoint? Worst(
        DiversionFlight flight, CriticalFailure failure, PerformanceTable cruise, IEnumerable<FailurePoint> from, FlightProfile profile, Pounds afterLanding,
        out string why)
    {
        var found = new List<CriticalPoint>();
        why = "there is no cruise.";
        foreach (var point in from)
        {
            var weightLb = profile.TakeoffWeight.Value - point.BurnedLb;
            var levelFt = failure == CriticalFailure.CabinPressure ? UnpressurisedFt : Math.Min(point.AltitudeFt, HighestFt(cruise, point, weightLb));
            var leftLb = (profile.TripFuel + afterLanding).Value - point.BurnedLb;
            if (Least(flight, point, weightLb, levelFt, leftLb, out why) is not { } least) return null;
            found.Add(least);
        }

        return found.MaxBy(point => point.Shortfall);
    }

    /// <summary>The airport that needs least; one that cannot need less than the best so far is not flown to.</summary>
    private CriticalPoint? Least(DiversionFlight flight, FailurePoint point, double weightLb, double levelFt, double leftLb, out string why)
    {
        why = string.Create(CultureInfo.InvariantCulture, $"no airport of the book can be reached from {point.AlongNm:0} NM after departure.");
        if (_airports is null || _airports.All.IsEmpty) return null;
        if (flight.Bound(point, weightLb, levelFt, out var fixedLb, out var freeNm, out var lbPerNm) is { } outside)
        {
            why = outside;
            return null;
        }

        CriticalPoint? least = null;
        var leastNm = new double[_airports.All.Length];
        var nearest = _airports.Distances(point.Position, leastNm);
        for (var index = -1; index < leastNm.Length; index++)
        {
            if (index == nearest) continue;
            var airport = index < 0 ? nearest : index;
            if (least is not null && fixedLb + Math.Max(0, leastNm[airport] - freeNm) * lbPerNm >= least.Needed.Value) continue;
            if (flight.Fly(point, weightLb, levelFt, leftLb, _airports.All[airport], out var flown) is { } ended) why = ended;
            else if (flown is not null && (least is null || flown.Needed < least.Needed)) least = flown;
        }

        return least;
    }

    private double HighestFt(PerformanceTable cruise, FailurePoint point, double weightLb)
    {
        var air = _context.Air.At(point.Position, new Feet(point.AltitudeFt), _setup.Takeoff + Duration.FromHours(point.Hours));
        return cruise.Range(2, [weightLb, StandardAtmosphere.DeviationK(air.Temperature, new Feet(point.AltitudeFt)), point.AltitudeFt]).High;
    }

    private static string Words(CriticalFailure failure) => failure == CriticalFailure.CabinPressure ? "a loss of cabin pressure" : "an engine failure";
}
