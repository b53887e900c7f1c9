using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Seats the passengers of a load otherwise: the heaviest as far forward, or as far aft, as there are seats.</summary>
internal static class LoadReseating
{
    private const string Assumption =
        "Spread of the centre of gravity: the same passengers over all seats that pilots do not take, the heaviest foremost or aftmost, an infant with its adult; maxima of rows not looked at, bags as stowed.";

    /// <summary>The moments at both ends; null where nobody can sit elsewhere: no passenger in a seat, or seats at one arm only.</summary>
    /// <param name="load">The load.</param>
    public static (PoundInches Forward, PoundInches Aft)? Extremes(LoadPlan load)
    {
        // Weights that move together: a passenger in a seat, with the infants on laps that follow in the manifest.
        var groups = new List<double>();
        var momentNow = 0.0;
        foreach (var item in load.Items)
        {
            if (item.Kind != LoadItemKind.Passenger) continue;
            if (item.TakesSeat) groups.Add(item.Weight.Value);
            else if (item.Category == LoadPersons.Infant && item.Station.Length > 0 && groups.Count > 0) groups[^1] += item.Weight.Value;
            else continue;
            momentNow += item.Moment.Value;
        }

        var arms = Seats(load);
        if (groups.Count == 0 || arms.Count < groups.Count || arms[0] == arms[^1]) return null;
        groups.Sort((a, b) => b.CompareTo(a));
        double forward = 0, aft = 0;
        for (var i = 0; i < groups.Count; i++)
        {
            forward += groups[i] * arms[i];
            aft += groups[i] * arms[^(i + 1)];
        }

        var rest = load.ZeroFuel.Moment - new PoundInches(momentNow);
        return (rest + new PoundInches(forward), rest + new PoundInches(aft));
    }

    /// <summary>The spread of a load with fuel; null where moments are not known or nobody can sit elsewhere.</summary>
    /// <param name="load">The load.</param>
    /// <param name="block">Fuel at off blocks [lb].</param>
    /// <param name="taxi">Fuel burned before takeoff [lb].</param>
    /// <param name="trip">Fuel burned from takeoff to landing [lb].</param>
    public static LoadSpread? Of(LoadPlan load, Pounds block, Pounds taxi, Pounds trip)
    {
        if (!load.HasMoments || Extremes(load) is not var (forward, aft)) return null;
        return new LoadSpread { Forward = With(forward), Aft = With(aft), Assumption = Assumption };

        SeatingOutcome With(PoundInches moment)
        {
            var sheet = Loading.WithFuel(load with { ZeroFuel = load.ZeroFuel with { Moment = moment } }, block, taxi, trip);
            return new SeatingOutcome(sheet.ZeroFuel, sheet.Takeoff, sheet.Landing, sheet.Tests);
        }
    }

    // Arms of the seats that passengers may take, foremost first: those of the seat rows less the ones that pilots have, and the pilots' seats in which
    // passengers were put.
    private static List<double> Seats(LoadPlan load)
    {
        var arms = new List<double>();
        foreach (var stand in load.Stations)
        {
            var passengers = load.Items.Count(item => item is { Kind: LoadItemKind.Passenger, TakesSeat: true } && item.Station == stand.Station.Name);
            var free = stand.Station.Kind == StationKind.Seat ? stand.Station.Seats - (stand.Persons - passengers) : passengers;
            for (var seat = 0; seat < Math.Max(free, passengers); seat++) arms.Add(stand.Station.Arm.Value);
        }

        arms.Sort();
        return arms;
    }
}
