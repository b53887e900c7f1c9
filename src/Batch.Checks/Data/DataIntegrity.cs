using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks.Data;

/// <summary>Whether everything the leg depends on could be read.</summary>
internal sealed class DataIntegrity : ICheck
{
    /// <summary>Id of the check.</summary>
    public const string Number = "ADM-05";

    private const string Name = "Data as read";

    /// <inheritdoc/>
    public string Id => Number;

    /// <inheritdoc/>
    public string Title => Name;

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["every sheet"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var doubts = leg.Plan.Leg.Doubts;
        if (doubts.IsEmpty)
        {
            yield return ruling.Pass("Every cell that the leg depends on could be read.");
        }

        // What is said of several cells in the same words is said once, such as of the passengers of a trip that was taken out.
        foreach (var doubt in doubts.GroupBy(doubt => (doubt.State, doubt.Text)))
        {
            string[] cells = [.. doubt.Select(one => one.Cell).Distinct(StringComparer.Ordinal)];
            yield return doubt.Key.State switch
            {
                State.Fail => ruling.Trips("The figures of this leg are in doubt: " + doubt.Key.Text, cells),
                State.Caution => ruling.Trips(doubt.Key.Text, cells) with { Verdict = Verdict.Caution },
                State.Note => ruling.Note(doubt.Key.Text, cells),
            };
        }
    }

    /// <summary>The one answer about a leg that could not be planned.</summary>
    /// <param name="leg">The leg.</param>
    public static Finding Unplanned(LegPlan.Unplanned leg) => new()
    {
        Check = Number,
        Title = Name,
        Verdict = Verdict.Fail,
        Text = "Not planned: " + leg.Sentence.TrimEnd('.') + (leg.Expected.Length > 0 && !leg.Why.Contains(leg.Expected, StringComparison.Ordinal)
            ? $" ({leg.Expected})"
            : "") + (leg.Why.EndsWith('?') && leg.Where.Length == 0 ? "" : "."),
        Citation = "data of the books",
        Cells = leg.Cells,
    };
}
