using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>Competency, instrument and line checks against the date of the leg.</summary>
internal sealed class CrewChecks : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-07";

    /// <inheritdoc/>
    public string Title => "Pilot checks current";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Crew", "Crew: competency check until", "Crew: instrument check until", "Crew: line check until"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["days of warning"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.SelectMany(seat => Look(leg, ruling, seat));

    private static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        if (seat.Member is not { } member)
        {
            yield return ruling.NotChecked($"the {seat.Role} {seat.Code} is not in the Crew sheet", seat.Cell);
            yield break;
        }

        yield return ValidUntil.Look(leg, ruling, "Competency check of " + seat.Code, member.CompetencyUntil, ruling.Condition("competency check"),
            hasGrace: true, member.Origin.Cell(nameof(CrewMember.CompetencyUntil)), seat.Cell);
        if (!seat.IsCaptain)
        {
            yield break;
        }

        if (ruling.Condition("instrument check") is { } instrument)
        {
            yield return ValidUntil.Look(leg, ruling, "Instrument check of " + seat.Code, member.InstrumentUntil, instrument, hasGrace: true,
                member.Origin.Cell(nameof(CrewMember.InstrumentUntil)), seat.Cell);
        }

        yield return ValidUntil.Look(leg, ruling, "Line check of " + seat.Code, member.LineCheckUntil, ruling.Condition("line check"), hasGrace: true,
            member.Origin.Cell(nameof(CrewMember.LineCheckUntil)), seat.Cell);
    }
}
