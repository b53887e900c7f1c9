using System.Globalization;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>The stations of a type while they are being filled.</summary>
internal sealed class LoadStations
{
    private const int SeatsOfACrewStation = 2;

    private readonly ImmutableArray<Station> _stations;
    private readonly Dictionary<StationKind, int[]> _orders = [];
    private readonly double[] _weightsLb;
    private readonly int[] _persons;

    /// <summary>Empty stations.</summary>
    /// <param name="stations">The stations in book order.</param>
    public LoadStations(ImmutableArray<Station> stations)
    {
        _stations = stations;
        _weightsLb = new double[stations.Length];
        _persons = new int[stations.Length];
        foreach (var kind in Enum.GetValues<StationKind>())
        {
            _orders[kind] = [.. Enumerable.Range(0, stations.Length).Where(i => stations[i].Kind == kind).OrderBy(i => stations[i].FillOrder ?? int.MaxValue)];
        }
    }

    /// <summary>No station.</summary>
    public const int None = -1;

    /// <summary>A station.</summary>
    /// <param name="station">Its index.</param>
    public Station this[int station] => _stations[station];

    /// <summary>Indices of the stations of a kind in the order in which they are filled.</summary>
    /// <param name="kind">The kind.</param>
    public IReadOnlyList<int> Order(StationKind kind) => _orders[kind];

    /// <summary>Seats not taken. A crew station without a number of seats holds two pilots.</summary>
    /// <param name="station">Index of the station.</param>
    public int FreeSeats(int station)
    {
        var seats = _stations[station].Kind == StationKind.Crew && _stations[station].Seats == 0 ? SeatsOfACrewStation : _stations[station].Seats;
        return seats - _persons[station];
    }

    /// <summary>Weight that may still be put at a station [lb]; infinite where the book gives no maximum, never negative.</summary>
    /// <param name="station">Index of the station.</param>
    public double RoomLb(int station) => _stations[station].Maximum is { } maximum ? Math.Max(0, maximum.Value - _weightsLb[station]) : double.PositiveInfinity;

    /// <summary>Whether somebody sits at a station.</summary>
    /// <param name="station">Index of the station.</param>
    public bool IsFilled(int station) => _persons[station] > 0;

    /// <summary>Puts a load at a station.</summary>
    /// <param name="station">Index of the station.</param>
    /// <param name="weightLb">Weight [lb].</param>
    /// <param name="takesSeat">Whether it takes a seat.</param>
    public void Put(int station, double weightLb, bool takesSeat)
    {
        _weightsLb[station] += weightLb;
        if (takesSeat) _persons[station]++;
    }

    /// <summary>
    /// The station with a free seat that comes first in the fill order and can bear a person; where all with a free seat would exceed their maximum, the first
    /// of them: the person has a seat, and the check of the station's load tells the rest.
    /// </summary>
    /// <param name="kind">Kind of the stations.</param>
    /// <param name="weightLb">Weight of the person [lb].</param>
    /// <returns>Index of the station; <see cref="None"/> where no seat is free.</returns>
    public int Seat(StationKind kind, double weightLb)
    {
        var free = None;
        foreach (var station in _orders[kind])
        {
            if (FreeSeats(station) <= 0) continue;
            if (RoomLb(station) >= weightLb) return station;
            if (free == None) free = station;
        }

        return free;
    }

    /// <summary>The first baggage station that can take a weight as a whole.</summary>
    /// <param name="weightLb">Weight [lb].</param>
    /// <returns>Index of the station; <see cref="None"/> where none can.</returns>
    public int Hold(double weightLb)
    {
        foreach (var station in _orders[StationKind.Bags])
            if (RoomLb(station) >= weightLb) return station;
        return None;
    }

    /// <summary>
    /// The station at whose arm the moment of something without a place is taken: the last of the kind in fill order, else the last seat row, else the last
    /// station.
    /// </summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Index of the station; <see cref="None"/> where the type has no stations.</returns>
    public int Last(StationKind kind)
    {
        if (_orders[kind].Length > 0) return _orders[kind][^1];
        return _orders[StationKind.Seat].Length > 0 ? _orders[StationKind.Seat][^1] : _stations.Length - 1;
    }

    /// <summary>
    /// The station meant by a word: its name (case and spaces ignored), or the only seat row with the number in it, such as <c>2</c>, <c>2A</c> or <c>seat
    /// 2</c>.
    /// </summary>
    /// <param name="asked">The word.</param>
    /// <returns>Index of the station; <see cref="None"/> where no station or more than one is meant.</returns>
    public int Named(string asked)
    {
        var word = Bare(asked);
        var named = Enumerable.Range(0, _stations.Length).Where(i => string.Equals(Bare(_stations[i].Name), word, StringComparison.OrdinalIgnoreCase))
            .ToArray();
        if (named.Length > 0) return named.Length == 1 ? named[0] : None;

        foreach (var prefix in new[] { "row", "seat" })
            if (word.StartsWith(prefix, StringComparison.OrdinalIgnoreCase)) word = word[prefix.Length..];
        var digits = string.Concat(word.TakeWhile(char.IsAsciiDigit));
        var letters = word[digits.Length..];
        if (letters.Length > 1 || !letters.All(char.IsAsciiLetter) || !int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var row))
            return None;
        var rows = Enumerable.Range(0, _stations.Length).Where(i => _stations[i].Kind == StationKind.Seat && NumberIn(_stations[i].Name) == row).ToArray();
        return rows.Length == 1 ? rows[0] : None;
    }

    /// <summary>What stands at each station, in station order.</summary>
    public ImmutableArray<StationLoad> Loads() => [.. _stations.Select((station, i) => new StationLoad(station, new Pounds(_weightsLb[i]), _persons[i]))];

    private static string Bare(string name) => string.Concat(name.Where(c => !char.IsWhiteSpace(c)));

    private static int? NumberIn(string name)
    {
        var digits = string.Concat(name.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(char.IsAsciiDigit));
        return int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
