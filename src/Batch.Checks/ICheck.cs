using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>One check. Each answers at least once for every leg it is asked about; what it rests on stands in the rule files under its id.</summary>
internal interface ICheck
{
    /// <summary>Stable id, such as <c>FUEL-03</c>.</summary>
    string Id { get; }

    /// <summary>Title in plain English.</summary>
    string Title { get; }

    /// <summary>
    /// Which inputs it needs, one an entry, as sheet and column, or <c>the plan</c> for what the planner must have computed. For each a test takes the input
    /// away and wants that the check no longer passes, or names the documented value that stands in.
    /// </summary>
    ImmutableArray<string> Needs { get; }

    /// <summary>Who can act on it: dispatcher, captain, chief pilot, maintenance, ramp.</summary>
    string Actor => "dispatcher";

    /// <summary>
    /// Whether the answer depends on other legs of the aircraft or the pilots too; where not, it stays as it is while the leg's own plan does.
    /// </summary>
    bool LooksAround => false;

    /// <summary>
    /// Whether its margin, as a share of the limit, tells how near a leg is to failing. Not where it was chosen (fuel planned to the least that is allowed,
    /// full tanks, a level flown at its minimum), nor where the limit is no measure of it (hours to an inspection on a running total).
    /// </summary>
    /// <param name="plan">The leg.</param>
    bool HasTellingMargin(LegPlan.Planned plan) => true;

    /// <summary>Names of the amounts that a value in the operator's Checks sheet replaces, in the order in which that cell names them (<c>15/10</c>).</summary>
    ImmutableArray<string> Tunable => [];

    /// <summary>Looks at a leg.</summary>
    /// <param name="leg">The leg with its surroundings.</param>
    /// <param name="ruling">The rules that hold for this check on this leg, with the operator's settings; at least one.</param>
    IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling);
}
