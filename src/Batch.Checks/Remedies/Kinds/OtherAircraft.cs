using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>
/// Another aircraft of the fleet that is free: of the same type first; of another type with a captain who may fly it, at the best level and with the minimum
/// fuel.
/// </summary>
internal sealed class OtherAircraft : IRemedyKind
{
    /// <summary>Most aircraft and captains tried as a whole.</summary>
    public const int MostWhole = 16;

    private const int MostCaptains = 2;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Aircraft;

    /// <inheritdoc/>
    public bool Suits(Failure failure) =>
        !failure.IsOneOf("ADM-", "ALT-", "CREW-02", "CREW-03", "CREW-04", "CREW-05", "CREW-06", "CREW-07", "CREW-08", "CREW-09");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure.Ground, failure.Plan), failure.Check, looksAlone: false, MostWhole);

    /// <summary>The leg, with the legs of its trip or alone, flown by every other aircraft that looks free, best first.</summary>
    /// <param name="ground">The week.</param>
    /// <param name="plan">The leg, planned or not.</param>
    public static IEnumerable<WeekEdit> Edits(RemedyGround ground, LegPlan plan)
    {
        if (Stretch.Of(plan)?.Leg is not { } leg || !ground.Input.Fleet.TryGetValue(leg.Aircraft, out var given))
        {
            yield break;
        }

        var steps = ground.UnderCheck.Aircraft(leg.Aircraft)?.Steps ?? [];
        foreach (var legs in Free.Scopes(ground, plan, _ => true).Where(legs => Free.Without(steps, given.Home, legs)))
        {
            var free = ground.Input.Fleet.Values
                .Where(aircraft => !string.Equals(aircraft.Registration, leg.Aircraft, StringComparison.OrdinalIgnoreCase))
                .Where(aircraft => Free.For(ground.UnderCheck.Aircraft(aircraft.Registration)?.Steps ?? [], aircraft.Home, legs))
                .OrderBy(aircraft => aircraft.Type != given.Type)
                .ThenBy(aircraft => aircraft.Registration, StringComparer.Ordinal);
            foreach (var aircraft in free)
            {
                if (aircraft.Type == given.Type)
                {
                    yield return Handed(legs, aircraft, null);
                }
                else if (ground.Input.Types.TryGetValue(aircraft.Type, out var type))
                {
                    foreach (var captain in Captains(ground, leg, type, legs).Take(MostCaptains))
                    {
                        yield return Handed(legs, aircraft, captain);
                    }
                }
            }
        }
    }

    private static IEnumerable<CrewMember> Captains(RemedyGround ground, Leg leg, AircraftType type, ImmutableArray<Stretch> legs) =>
        OtherPilot.Qualified(ground, type, isCaptain: true)
            .Where(member => !string.Equals(member.Code, leg.SecondPilot, StringComparison.OrdinalIgnoreCase))
            .Where(member => string.Equals(member.Code, leg.Captain, StringComparison.OrdinalIgnoreCase)
                || Free.For(ground.UnderCheck.Crew(member.Code)?.Steps ?? [], member.Base, legs))
            .OrderBy(member => !string.Equals(member.Code, leg.Captain, StringComparison.OrdinalIgnoreCase));

    /// <summary>The legs handed over; a captain is named only for another type.</summary>
    private static WeekEdit Handed(ImmutableArray<Stretch> legs, Aircraft aircraft, CrewMember? captain)
    {
        var edit = new WeekEdit($"Fly {string.Join(", ", legs.Select(stretch => stretch.Leg.Key))} with {aircraft.Registration} instead of {legs[0].Leg.Aircraft}{(captain is null ? "" : $", captain {captain.Code}")}", Disruptions.Aircraft);
        foreach (var leg in legs.Select(stretch => stretch.Leg))
        {
            var after = leg with { Aircraft = aircraft.Registration };
            var cells = new List<(string, string)> { (nameof(Leg.Aircraft), aircraft.Registration) };
            if (leg.FuelAboard is not null)
            {
                after = after with { FuelAboard = null };
                cells.Add((nameof(Leg.FuelAboard), ""));
            }

            if (captain is not null)
            {
                after = after with { Captain = captain.Code, Level = null, IsLevelAuto = true, Setting = "" };
                cells.AddRange([(nameof(Leg.Captain), captain.Code), (nameof(Leg.Level), "auto")]);
                if (leg.Setting.Length > 0)
                {
                    cells.Add((nameof(Leg.Setting), ""));
                }

                if (leg.FuelPlan is not null and not FuelPlan.Minimum { Extra.Value: 0 })
                {
                    after = after with { FuelPlan = new FuelPlan.Minimum(Pounds.Zero) };
                    cells.Add((nameof(Leg.FuelPlan), "minimum"));
                }
            }

            edit = edit.With(leg, after, [.. cells.Where(cell => cell.Item2.Length > 0 || leg.Origin.HasColumn(cell.Item1))]);
        }

        return edit;
    }
}
