using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Another pilot of the Crew sheet who is free and qualified, or a second pilot where one is missing.</summary>
internal sealed class OtherPilot : IRemedyKind
{
    private const int MostWhole = 16;

    /// <inheritdoc/>
    public int Disruption => Disruptions.People;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("CREW-", "ALT-06");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check, looksAlone: false, MostWhole);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var leg = failure.Leg;
        var captain = IsAbout(failure, leg.Captain, nameof(Leg.Captain));
        var second = IsAbout(failure, leg.SecondPilot, nameof(Leg.SecondPilot)) || (leg.SecondPilot.Length == 0 && failure.IsOneOf("CREW-10"));
        var edits = Enumerable.Empty<WeekEdit>();
        if (captain || !second)
        {
            edits = edits.Concat(InSeat(failure, isCaptain: true));
        }

        return second ? edits.Concat(InSeat(failure, isCaptain: false)) : edits;
    }

    private static bool IsAbout(Failure failure, string code, string field) =>
        code.Length > 0 && (failure.Finding.Cells.Contains(failure.Leg.Origin.Cell(field))
            || failure.Finding.Text.Contains(code, StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<WeekEdit> InSeat(Failure failure, bool isCaptain)
    {
        string Code(Leg leg) => isCaptain ? leg.Captain : leg.SecondPilot;
        var field = isCaptain ? nameof(Leg.Captain) : nameof(Leg.SecondPilot);
        var role = isCaptain ? "captain" : "second pilot";
        var steps = failure.Ground.UnderCheck.Crew(Code(failure.Leg))?.Steps ?? [];
        foreach (var legs in Free.Scopes(failure.Ground, failure.Plan, leg => string.Equals(Code(leg), Code(failure.Leg), StringComparison.OrdinalIgnoreCase))
            .Where(legs => Free.Without(steps, "", legs)))
        {
            foreach (var member in Candidates(failure, legs, isCaptain))
            {
                yield return legs.Aggregate(
                    new WeekEdit($"Let {member.Code} fly {string.Join(", ", legs.Select(plan => plan.Leg.Key))} as {role}{(Code(failure.Leg).Length > 0 ? $" instead of {Code(failure.Leg)}" : "")}", Disruptions.People),
                    (edit, plan) => edit.With(
                        plan.Leg, isCaptain ? plan.Leg with { Captain = member.Code } : plan.Leg with { SecondPilot = member.Code }, (field, member.Code)));
            }
        }
    }

    /// <summary>Pilots who could take over legs, by code.</summary>
    /// <param name="failure">The failure.</param>
    /// <param name="legs">The legs.</param>
    /// <param name="isCaptain">For which seat.</param>
    private static IEnumerable<CrewMember> Candidates(Failure failure, ImmutableArray<Stretch> legs, bool isCaptain) =>
        Qualified(failure.Ground, failure.Plan.Type, isCaptain)
            .Where(member => !Who.Pilots(failure.Plan).Contains(member.Code, StringComparer.OrdinalIgnoreCase))
            .Where(member => Free.For(failure.Ground.UnderCheck.Crew(member.Code)?.Steps ?? [], member.Base, legs));

    /// <summary>Pilots who may fly a type in a seat, by code.</summary>
    /// <param name="ground">The week.</param>
    /// <param name="type">The type.</param>
    /// <param name="isCaptain">Which seat.</param>
    internal static IEnumerable<CrewMember> Qualified(RemedyGround ground, AircraftType type, bool isCaptain) =>
        ground.Input.Crew.Values.Where(member => member.Types.Contains(type.Name, StringComparer.OrdinalIgnoreCase)
            && (isCaptain ? member.MayCommand : member.MayAssist) == true);
}
