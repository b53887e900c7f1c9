using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>Medical certificate of each pilot against the date of the leg.</summary>
internal sealed class Medical : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-09";

    /// <inheritdoc/>
    public string Title => "Medical certificate";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Crew", "Crew: medical until"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["days of warning"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => seat.Member is { } member
        ? ValidUntil.Look(leg, ruling, "Medical certificate of " + seat.Code, member.MedicalUntil, ruling.Condition("medical certificate"), hasGrace: false,
            member.Origin.Cell(nameof(CrewMember.MedicalUntil)), seat.Cell)
        : ruling.NotChecked($"the {seat.Role} {seat.Code} is not in the Crew sheet", seat.Cell));
}
