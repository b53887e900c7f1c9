using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Another aircraft of the fleet that is free: of the same type first; of another type with a captain who may fly it, at the best level and with the minimum fuel.</summary>
internal sealed class OtherAircraft : IRemedyKind
{
    private const int MostWhole = 16;
    private const int MostCaptains = 2;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Aircraft;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => !failure.IsOneOf("ADM-", "ALT-", "CREW-02", "CREW-03", "CREW-04", "CREW-05", "CREW-06", "CREW-07", "CREW-08", "CREW-09");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check, looksAlone: false, MostWhole);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var ground = failure.Ground;
        var steps = ground.UnderCheck.Aircraft(failure.Leg.Aircraft)?.Steps ?? [];
        foreach (var legs in Free.Scopes(failure, _ => true).Where(legs => Free.Without(steps, failure.Plan.Aircraft.Home, legs)))
        {
            var free = ground.Input.Fleet.Values
                .Where(aircraft => !string.Equals(aircraft.Registration, failure.Leg.Aircraft, StringComparison.OrdinalIgnoreCase))
                .Where(aircraft => Free.For(ground.UnderCheck.Aircraft(aircraft.Registration)?.Steps ?? [], aircraft.Home, legs))
                .OrderBy(aircraft => aircraft.Type != failure.Plan.Type.Name)
                .ThenBy(aircraft => aircraft.Registration, StringComparer.Ordinal);
            foreach (var aircraft in free)
            {
                if (aircraft.Type == failure.Plan.Type.Name)
                {
                    yield return Handed(legs, aircraft, null);
                }
                else if (ground.Input.Types.TryGetValue(aircraft.Type, out var type))
                {
                    foreach (var captain in Captains(failure, type, legs).Take(MostCaptains))
                    {
                        yield return Handed(legs, aircraft, captain);
                    }
                }
            }
        }
    }

    private static IEnumerable<CrewMember> Captains(Failure failure, AircraftType type, ImmutableArray<LegPlan.Planned> legs) =>
        OtherPilot.Qualified(failure.Ground, type, isCaptain: true)
            .Where(member => !string.Equals(member.Code, failure.Leg.SecondPilot, StringComparison.OrdinalIgnoreCase))
            .Where(member => string.Equals(member.Code, failure.Leg.Captain, StringComparison.OrdinalIgnoreCase) || Free.For(failure.Ground.UnderCheck.Crew(member.Code)?.Steps ?? [], member.Base, legs))
            .OrderBy(member => !string.Equals(member.Code, failure.Leg.Captain, StringComparison.OrdinalIgnoreCase));

    /// <summary>The legs handed over; a captain is named only for another type.</summary>
    private static WeekEdit Handed(ImmutableArray<LegPlan.Planned> legs, Aircraft aircraft, CrewMember? captain)
    {
        var edit = new WeekEdit($"Fly {string.Join(", ", legs.Select(plan => plan.Key))} with {aircraft.Registration} instead of {legs[0].Leg.Aircraft}{(captain is null ? "" : $", captain {captain.Code}")}", Disruptions.Aircraft);
        foreach (var leg in legs.Select(plan => plan.Leg))
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
