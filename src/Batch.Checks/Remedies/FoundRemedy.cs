namespace Batch.Checks.Remedies;

/// <summary>A change that was planned and checked, and makes the check pass.</summary>
/// <param name="Edit">The change.</param>
/// <param name="Leaves">What is left to decide afterwards: cautions and missing inputs that were not there before, as words.</param>
internal sealed record FoundRemedy(WeekEdit Edit, ImmutableArray<string> Leaves)
{
    /// <summary>As findings carry it.</summary>
    public Remedy AsRemedy() => new(
        Edit.Sentence + (Leaves.IsEmpty ? "" : $"; then look at {string.Join(", ", Leaves)}"),
        Edit.Disruption,
        Edit.IsWritable ? Edit.Changes : Edit.Changes.Clear());
}
