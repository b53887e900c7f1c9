using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Seats the pilots who are not counted in the empty weight, and the passengers.</summary>
internal sealed class LoadPersons
{
    /// <summary>Category of an infant on an item.</summary>
    public const string Infant = "infant";

    private readonly LoadRequest _request;
    private readonly LoadStations _stations;
    private readonly LoadAssumptions _assumptions;
    private readonly List<Person> _pilots = [];
    private readonly List<Person> _passengers = [];

    private LoadPersons(LoadRequest request, LoadStations stations, LoadAssumptions assumptions)
    {
        _request = request;
        _stations = stations;
        _assumptions = assumptions;
    }

    private sealed class Person
    {
        public required LoadItem Item { get; init; }

        public bool IsOnLap { get; set; }

        public int Named { get; init; } = LoadStations.None;

        public int Station { get; set; } = LoadStations.None;
    }

    /// <summary>
    /// Seats everybody: pilots in the pilot seats, passengers in the seats they named, then pilots without a pilot seat and the other passengers by fill order,
    /// infants on laps.
    /// </summary>
    /// <param name="request">The request.</param>
    /// <param name="stations">The stations, filled further.</param>
    /// <param name="assumptions">The assumptions, added to.</param>
    /// <param name="pilots">Pilots aboard.</param>
    /// <param name="withoutSeat">Persons of two years or more for whom there is no seat.</param>
    /// <returns>The items, pilots first, passengers in manifest order.</returns>
    public static IReadOnlyList<LoadItem> Seat(LoadRequest request, LoadStations stations, LoadAssumptions assumptions, out int pilots, out int withoutSeat)
    {
        var persons = new LoadPersons(request, stations, assumptions);
        pilots = persons.SeatPilots();
        foreach (var line in request.Passengers) persons._passengers.Add(persons.Passenger(line));
        foreach (var person in persons._passengers.Where(person => person.Named != LoadStations.None)) persons.SeatAsNamed(person);
        foreach (var person in persons._pilots.Concat(persons._passengers).Where(person => !person.IsOnLap)) persons.SeatByOrder(person);
        persons.PutOnLaps();
        withoutSeat = persons._pilots.Concat(persons._passengers).Count(person => !person.IsOnLap && person.Station == LoadStations.None);
        if (withoutSeat > 0 && stations.Last(StationKind.Seat) is var last && last != LoadStations.None)
            assumptions.Count("no seat left for # person", "no seat left for # persons", $": the weight is taken at {stations[last].Name}", withoutSeat);
        return [.. persons._pilots.Concat(persons._passengers).Select(persons.Finish)];
    }

    private int SeatPilots()
    {
        CrewMember?[] pilots = _request.SecondPilot is not null || _request.HasSecondPilot ? [_request.Captain, _request.SecondPilot] : [_request.Captain];
        for (var i = 0; i < pilots.Length; i++)
        {
            var isCounted = i < _request.Aircraft.PilotsIncluded;
            var weight = isCounted ? Pounds.Zero : pilots[i]?.Weight ?? _request.Weights.Pilot;
            var seat = _stations.Seat(StationKind.Crew, weight.Value);
            if (seat != LoadStations.None) _stations.Put(seat, weight.Value, takesSeat: true);
            if (isCounted) continue;
            var isAssumed = pilots[i]?.Weight is null;
            if (isAssumed) _assumptions.Standard("pilot", "pilots", "", _request.Weights.Pilot);
            _pilots.Add(new Person
            {
                Station = seat,
                Item = Item(pilots[i]?.Name ?? (i == 0 ? "captain" : "second pilot"), LoadItemKind.Pilot, "", weight, isAssumed,
                    pilots[i]?.Origin ?? Origin.None, nameof(CrewMember.Weight)),
            });
        }

        if (_request.Aircraft.PilotsIncluded > pilots.Length)
            _assumptions.Say(
                $"the empty weight of {_request.Aircraft.Registration} counts one pilot more than is aboard: the weights are those with that pilot");
        return pilots.Length;
    }

    private Person Passenger(ManifestLine line)
    {
        var category = line.Category ?? PersonCategory.Adult;
        var (label, standard) = category switch
        {
            PersonCategory.Adult => ("adult", _request.Weights.Adult),
            PersonCategory.Man => ("man", _request.Weights.Man),
            PersonCategory.Woman => ("woman", _request.Weights.Woman),
            PersonCategory.Child => ("child", _request.Weights.Child),
            PersonCategory.Infant => (Infant, _request.Weights.Infant),
        };
        if (line.Weight is null) _assumptions.Standard("passenger", "passengers", label, standard);
        if (line.Category is null) _assumptions.Count("no category stated for # passenger", "no category stated for # passengers", ": taken as adult");
        var named = line.Seat.Length == 0 ? LoadStations.None : _stations.Named(line.Seat);
        if (line.Seat.Length > 0 && (named == LoadStations.None || _stations[named].Kind == StationKind.Bags))
        {
            _assumptions.Say($"seat '{line.Seat}'{At(line)} is no seat of {_request.Type.Name}: seated by the fill order");
            named = LoadStations.None;
        }

        return new Person
        {
            Named = named,
            IsOnLap = category == PersonCategory.Infant && named == LoadStations.None,
            Item = Item(line.Name, LoadItemKind.Passenger, label, line.Weight ?? standard, line.Weight is null, line.Origin,
                nameof(ManifestLine.Weight)) with
            { Basis = line.Weight is null ? "" : line.WeightBasis },
        };
    }

    private void SeatAsNamed(Person person)
    {
        if (_stations.FreeSeats(person.Named) <= 0)
        {
            _assumptions.Say($"more persons ask for {_stations[person.Named].Name} than it has seats: the later ones are seated by the fill order");
            person.IsOnLap = person.Item.Category == Infant;
            return;
        }

        Sit(person, person.Named);
    }

    private void SeatByOrder(Person person)
    {
        if (person.Station != LoadStations.None) return;
        var seat = _stations.Seat(StationKind.Seat, person.Item.Weight.Value);
        if (seat != LoadStations.None) Sit(person, seat);
    }

    private void Sit(Person person, int station)
    {
        person.Station = station;
        _stations.Put(station, person.Item.Weight.Value, takesSeat: true);
    }

    // An infant's weight counts where the passenger of the line before it sits; without one, at the first row in which somebody sits.
    private void PutOnLaps()
    {
        for (var i = 0; i < _passengers.Count; i++)
        {
            if (!_passengers[i].IsOnLap) continue;
            var adult = _passengers.Take(i).LastOrDefault(person => !person.IsOnLap && person.Station != LoadStations.None);
            var order = _stations.Order(StationKind.Seat);
            var station = adult?.Station
                ?? order.Concat(_stations.Order(StationKind.Crew)).FirstOrDefault(_stations.IsFilled, order.Count > 0 ? order[0] : LoadStations.None);
            _passengers[i].Station = station;
            if (station != LoadStations.None) _stations.Put(station, _passengers[i].Item.Weight.Value, takesSeat: false);
        }
    }

    private LoadItem Finish(Person person)
    {
        var place = person.Station != LoadStations.None ? person.Station : _stations.Last(StationKind.Seat);
        return person.Item with
        {
            Station = person.Station == LoadStations.None ? "" : _stations[person.Station].Name,
            Arm = place == LoadStations.None ? Inches.Zero : _stations[place].Arm,
            TakesSeat = !person.IsOnLap && person.Station != LoadStations.None,
        };
    }

    private static LoadItem Item(string what, LoadItemKind kind, string category, Pounds weight, bool isAssumed, Origin origin, string field) => new()
    {
        What = what,
        Kind = kind,
        Category = category,
        Station = "",
        Weight = weight,
        Arm = Inches.Zero,
        IsAssumed = isAssumed,
        Cell = origin.Cell(isAssumed ? "" : field),
    };

    private static string At(ManifestLine line) => line.Origin.Cell(nameof(ManifestLine.Seat)) is { Length: > 0 } cell ? $" ({cell})" : "";
}
