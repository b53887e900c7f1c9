using Batch.Checks.Rules;

namespace Batch.Checks;

/// <summary>One check. Each answers at least once for every leg it is asked about; what it rests on stands in the rule files under its id.</summary>
internal interface ICheck
{
    /// <summary>Stable id, such as <c>FUEL-03</c>.</summary>
    string Id { get; }

    /// <summary>Title in plain English.</summary>
    string Title { get; }

    /// <summary>Which inputs it needs, by sheet.</summary>
    string Needs { get; }

    /// <summary>Who can act on it: dispatcher, captain, chief pilot, maintenance, ramp.</summary>
    string Actor => "dispatcher";

    /// <summary>Whether the answer depends on other legs of the aircraft or the pilots too; where not, it stays as it is while the leg's own plan does.</summary>
    bool LooksAround => false;

    /// <summary>Whether its margin is what was chosen: fuel planned to the least that is allowed, a level flown at its minimum. Such a margin says nothing of how near the leg is to failing.</summary>
    bool MarginIsChosen => false;

    /// <summary>Names of the amounts that a value in the operator's Checks sheet replaces, in the order in which that cell names them (<c>15/10</c>).</summary>
    ImmutableArray<string> Tunable => [];

    /// <summary>Looks at a leg.</summary>
    /// <param name="leg">The leg with its surroundings.</param>
    /// <param name="ruling">The rules that hold for this check on this leg, with the operator's settings; at least one.</param>
    IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling);
}
