using System.Globalization;
using Batch.SampleMaker.House;
using Batch.SampleMaker.Network;
using Batch.SampleMaker.Types;

namespace Batch.SampleMaker.Week;

/// <summary>A week of any size for measurements and property tests: a fleet that flies three legs a day, chains of aircraft and crew unbroken.</summary>
/// <remarks>The same seed gives the same week. Nothing fails on purpose; the load may now and then be too much.</remarks>
public sealed class RandomWeek
{
    private const int LegsPerDay = 3;
    private const int Days = 7;

    private static readonly LocalDate Monday = new(2026, 12, 7);

    /// <summary>Airports a type is sent to, and those that serve as its alternates.</summary>
    private static readonly ImmutableDictionary<string, ImmutableArray<string>> Served = new Dictionary<string, ImmutableArray<string>>
    {
        [HaldenH9.Name] = ["XAND", "XBEL", "XCOR", "XDUN", "XFEN", "XELM"],
        [BraskB6.Name] = ["XAND", "XBEL", "XFEN", "XELM"],
        [TovaneT10.Name] = ["XAND", "XBEL", "XCOR", "XDUN", "XFEN", "XMAR", "XOST", "XUMB", "XROA"],
    }.ToImmutableDictionary();

    private readonly Random _random;

    private RandomWeek(int legs, int seed)
    {
        _random = new Random(seed);
        var count = (legs + (LegsPerDay * Days) - 1) / (LegsPerDay * Days);
        Fleet = [.. Enumerable.Range(0, count).Select(Aircraft)];
        Pilots = [.. Enumerable.Range(0, count).Select(index => Pilot(index, "C", "captain")),
            .. Enumerable.Range(0, count).Select(index => Pilot(index, "S", "second pilot"))];
        var left = legs;
        var trips = new List<OneTrip>();
        for (var index = 0; index < count; index++)
        {
            var at = "XAND";
            for (var day = 0; day < Days && left > 0; day++)
            {
                var number = Math.Min(LegsPerDay, left);
                trips.Add(Trip("R" + (trips.Count + 1).ToString("0000", CultureInfo.InvariantCulture), index, day, number, ref at));
                left -= number;
            }
        }

        Trips = trips;
    }

    public IReadOnlyList<OneAircraft> Fleet { get; }

    public IReadOnlyList<OnePilot> Pilots { get; }

    public IReadOnlyList<OneTrip> Trips { get; }

    /// <summary>Makes a week.</summary>
    /// <param name="legs">Number of legs, 1 or more.</param>
    /// <param name="seed">Seed.</param>
    public static RandomWeek Of(int legs, int seed) => new(legs, seed);

    private static string Code(int index, string kind) => kind + index.ToString("000", CultureInfo.InvariantCulture);

    private OneAircraft Aircraft(int index)
    {
        var model = Airframes.All[index * 2 % Airframes.All.Length];
        return model with
        {
            Registration = "Q-R" + index.ToString("000", CultureInfo.InvariantCulture),
            EmptyLb = model.EmptyLb + _random.Next(-40, 60),
            PilotsIncluded = 0,
            BurnBiasPercent = _random.Next(-10, 31) / 10.0,
            NextInspectionAt = model.Hours + 90,
            Remark = "",
        };
    }

    private OnePilot Pilot(int index, string kind, string seats) =>
        House.Pilots.Pilot(Code(index, kind), $"Pilot {PeopleNames.Of(index)} {kind}", _random.Next(135, 215), Fleet[index].Type, seats, 3 + _random.Next(4),
            _random.Next(1500, 6000), _random.Next(150, 1200));

    private OneTrip Trip(string name, int index, int day, int legs, ref string at)
    {
        var type = TypeSheets.Of(Fleet[index].Type);
        var second = type.Name == TovaneT10.Name || index % 4 == 0;
        var draft = new TripDraft(name, Monday.PlusDays(day), Fleet[index].Registration, Code(index, "C"), second ? Code(index, "S") : "");
        var off = (Monday.PlusDays(day) + new LocalTime(9, 0)).InZoneStrictly(Sites.ZoneOf("XAND")).ToInstant() + Duration.FromMinutes(5 * _random.Next(12));
        var people = "";
        for (var number = 1; number <= legs; number++)
        {
            var from = at;
            var to = Destination(type, from);
            var local = off.InZone(Sites.ZoneOf(from)).LocalDateTime;
            draft.Leg(from, to, local.TimeOfDay.ToString("HH:mm", CultureInfo.InvariantCulture), leg => Filed(leg, type) with { Date = local.Date });
            people = _random.Next(10) == 0 ? "" : People(type);
            if (people.Length > 0)
            {
                draft.Carries(number.ToString(CultureInfo.InvariantCulture), people);
            }

            if (_random.Next(6) == 0)
            {
                draft.Loads(number.ToString(CultureInfo.InvariantCulture), "Parcels", 10 * _random.Next(1, 9));
            }

            off += Duration.FromMinutes(5 * Math.Ceiling((BlockMinutes(type, from, to) + 50 + _random.Next(60)) / 5));
            at = to;
        }

        return draft.Done();
    }

    private string Destination(InventedType type, string from)
    {
        var near = Served[type.Name].Where(ident => ident != from && Sites.Of(ident).Spot.DistanceNm(Sites.Of(from).Spot) < 240).ToArray();
        return near[_random.Next(near.Length)];
    }

    private OneLeg Filed(OneLeg leg, InventedType type) => leg with
    {
        Alternate = Served[type.Name].Where(ident => ident != leg.To).MinBy(ident => Sites.Of(ident).Spot.DistanceNm(Sites.Of(leg.To).Spot)) ?? "",
        Route = Ways.Between(leg.From, leg.To),
        Level = _random.Next(2) == 0 ? "auto" : Level(type, leg.From, leg.To),
        FuelPlan = _random.Next(10) switch
        {
            0 => "minimum+150",
            1 => "carry",
            2 => "full",
            _ => "minimum",
        },
        FuelAboardLb = leg.Number == 1 && leg.Date == Monday ? type.UsableFuelLb / 3 : null,
    };

    private static string Level(InventedType type, string from, string to)
    {
        var distance = Sites.Of(from).Spot.DistanceNm(Sites.Of(to).Spot);
        var eastbound = (Sites.Of(from).Spot.CourseDeg(Sites.Of(to).Spot) + 14) % 360 < 180;
        var hundreds = type.Pressurised ? distance switch { < 60 => 100, < 100 => 160, < 150 => 200, _ => 240 } : 100;
        return "FL" + (eastbound ? hundreds + 10 : hundreds + 20).ToString("000", CultureInfo.InvariantCulture);
    }

    private static double BlockMinutes(InventedType type, string from, string to) =>
        20 + (Sites.Of(from).Spot.DistanceNm(Sites.Of(to).Spot) * 1.1 / (type.Pressurised ? 215 : 130) * 60);

    private string People(InventedType type)
    {
        var words = Enumerable.Range(0, 1 + _random.Next(Math.Min(type.Seats, 7))).Select(_ => "MWAACMW"[_random.Next(7)].ToString()).ToList();
        if (_random.Next(8) == 0)
        {
            words.Add("I");
        }

        return string.Join(' ', words);
    }
}
