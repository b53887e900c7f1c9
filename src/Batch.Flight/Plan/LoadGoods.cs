using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Stows bags and cargo.</summary>
internal sealed class LoadGoods
{
    // Less than this is the rounding of sums, not a bag [lb].
    private const double NothingLb = 1e-9;

    private readonly LoadRequest _request;
    private readonly LoadStations _stations;
    private readonly LoadAssumptions _assumptions;
    private readonly List<LoadItem> _items = [];
    private double _withoutStationLb;

    private LoadGoods(LoadRequest request, LoadStations stations, LoadAssumptions assumptions)
    {
        _request = request;
        _stations = stations;
        _assumptions = assumptions;
    }

    /// <summary>
    /// Stows cargo that names its station, then bags, then the other cargo. Bags go into the first baggage station in fill order that takes those of one
    /// passenger together, else are parted over the stations; a piece of cargo is not parted. A named station is taken at the dispatcher's word, its maximum
    /// being a matter of the checks.
    /// </summary>
    /// <param name="request">The request.</param>
    /// <param name="stations">The stations, filled further.</param>
    /// <param name="assumptions">The assumptions, added to.</param>
    /// <param name="withoutStation">Weight for which no station was left.</param>
    /// <returns>The items: bags in manifest order, cargo in book order.</returns>
    public static IReadOnlyList<LoadItem> Stow(LoadRequest request, LoadStations stations, LoadAssumptions assumptions, out Pounds withoutStation)
    {
        var goods = new LoadGoods(request, stations, assumptions);
        var named = request.Cargo.Select(goods.NamedStation).ToArray();
        for (var i = 0; i < named.Length; i++)
            if (named[i] != LoadStations.None) stations.Put(named[i], request.Cargo[i].Weight.Value, takesSeat: false);
        foreach (var line in request.Passengers) goods.StowBags(line);
        for (var i = 0; i < named.Length; i++) goods.StowCargo(request.Cargo[i], named[i]);

        withoutStation = new Pounds(goods._withoutStationLb);
        if (goods._withoutStationLb > 0 && stations.Last(StationKind.Bags) is var last && last != LoadStations.None)
            assumptions.Say($"no baggage station left for {withoutStation}: taken at {stations[last].Name}");
        return goods._items;
    }

    private void StowBags(ManifestLine line)
    {
        var isAssumed = line.Bags is null && line.BagCount > 0;
        var weight = line.Bags ?? _request.Weights.Bag * (line.BagCount ?? 0);
        if (isAssumed) _assumptions.Standard("bag", "bags", "", _request.Weights.Bag, line.BagCount ?? 0);
        if (line.Bags is null && line.BagCount is null)
            _assumptions.Count("no bag weight stated for # passenger", "no bag weight stated for # passengers", ": taken as 0 lb");
        if (weight.Value <= 0) return;
        var item = new LoadItem
        {
            What = $"bags of {line.Name}",
            Kind = LoadItemKind.Bags,
            Station = "",
            Weight = weight,
            Arm = Inches.Zero,
            IsAssumed = isAssumed,
            BagCount = line.BagCount,
            Cell = line.Origin.Cell(isAssumed ? nameof(ManifestLine.BagCount) : nameof(ManifestLine.Bags)),
        };
        if (_stations.Hold(weight.Value) is var whole && whole != LoadStations.None)
        {
            Put(item, whole, weight.Value);
            return;
        }

        var leftLb = weight.Value;
        foreach (var station in _stations.Order(StationKind.Bags))
        {
            var partLb = Math.Min(leftLb, _stations.RoomLb(station));
            if (partLb <= NothingLb) continue;
            Put(item, station, partLb);
            item = item with { BagCount = null };
            leftLb -= partLb;
        }

        if (leftLb > NothingLb) Leave(item, leftLb);
    }

    private int NamedStation(CargoLine line)
    {
        if (line.Station.Length == 0) return LoadStations.None;
        var named = _stations.Named(line.Station);
        if (named == LoadStations.None)
        {
            var at = line.Origin.Cell(nameof(CargoLine.Station)) is { Length: > 0 } cell ? $" ({cell})" : "";
            _assumptions.Say($"station '{line.Station}'{at} is no station of {_request.Type.Name}: stowed by the fill order");
        }

        return named;
    }

    private void StowCargo(CargoLine line, int named)
    {
        if (line.Weight.Value <= 0) return;
        var item = new LoadItem
        {
            What = line.What,
            Kind = LoadItemKind.Cargo,
            Station = "",
            Weight = line.Weight,
            Arm = Inches.Zero,
            Cell = line.Origin.Cell(nameof(CargoLine.Weight)),
        };
        if (named != LoadStations.None) Add(item, named, line.Weight.Value);
        else if (_stations.Hold(line.Weight.Value) is var whole && whole != LoadStations.None) Put(item, whole, line.Weight.Value);
        else Leave(item, line.Weight.Value);
    }

    private void Put(LoadItem item, int station, double weightLb)
    {
        _stations.Put(station, weightLb, takesSeat: false);
        Add(item, station, weightLb);
    }

    private void Add(LoadItem item, int station, double weightLb) =>
        _items.Add(item with { Station = _stations[station].Name, Arm = _stations[station].Arm, Weight = new Pounds(weightLb) });

    private void Leave(LoadItem item, double weightLb)
    {
        _withoutStationLb += weightLb;
        var last = _stations.Last(StationKind.Bags);
        _items.Add(item with { Weight = new Pounds(weightLb), Arm = last == LoadStations.None ? Inches.Zero : _stations[last].Arm });
    }
}
