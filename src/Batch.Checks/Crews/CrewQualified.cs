using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>Whether each pilot is in the Crew sheet, on the type and in the right seat.</summary>
internal sealed class CrewQualified : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-12";

    /// <inheritdoc/>
    public string Title => "Crew known and qualified";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Crew", "Crew: types", "Crew: seats"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.SelectMany(seat => Look(leg, ruling, seat));

    private static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        if (seat.Member is not { } member)
        {
            yield return ruling.Trips($"The {seat.Role} {seat.Code} is not in the Crew sheet.", seat.Cell);
            yield break;
        }

        if (member.Types.IsEmpty)
        {
            yield return ruling.NotChecked($"the types of {seat.Code} are not given", member.Origin.Cell(nameof(CrewMember.Types)));
        }
        else if (!member.Types.Contains(leg.Type.Name, StringComparer.OrdinalIgnoreCase))
        {
            yield return ruling.Trips($"{seat.Code} is not qualified on {leg.Type.Name} by the Crew sheet.", seat.Cell,
                member.Origin.Cell(nameof(CrewMember.Types)));
        }
        else
        {
            yield return ruling.Pass($"{seat.Code} is qualified on {leg.Type.Name}.", null, member.Origin.Cell(nameof(CrewMember.Types)), seat.Cell);
        }

        yield return (seat.IsCaptain ? member.MayCommand : member.MayAssist) switch
        {
            null => ruling.NotChecked($"whether {seat.Code} may fly as {seat.Role} is not given", member.Origin.Cell(nameof(CrewMember.MayCommand))),
            false => ruling.Trips($"{seat.Code} may not fly as {seat.Role} by the Crew sheet.", seat.Cell, member.Origin.Cell(nameof(CrewMember.MayCommand))),
            true => ruling.Pass($"{seat.Code} may fly as {seat.Role}.", null, member.Origin.Cell(nameof(CrewMember.MayCommand)), seat.Cell),
        };
    }
}
