using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>Total flight time of the captain.</summary>
internal sealed class PilotHours : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-06";

    /// <inheritdoc/>
    public string Title => "Pilot qualification";

    /// <inheritdoc/>
    public string Needs => "Crew hours";

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["total hours of the captain"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var captain = leg.Seats.First();
        var limit = ruling.Amount("total hours of the captain");
        if (captain.Member is not { } member)
        {
            yield return ruling.NotChecked($"the captain {captain.Code} is not in the Crew sheet", captain.Cell);
        }
        else if (member.Hours is not { } hours)
        {
            yield return ruling.NotChecked($"the hours of {captain.Code} are not given", member.Origin.Cell(nameof(CrewMember.Hours)));
        }
        else
        {
            yield return ruling.AtLeast($"Total flight time of {captain.Code}", hours, limit.Value, "h", "required of a captain (cross-country, night and instrument hours are not in the book)", limit, captain.Cell, member.Origin.Cell(nameof(CrewMember.Hours)));
        }
    }
}
