using Batch.Checks.Rules;

namespace Batch.Checks.Following;

/// <summary>Whether the operator's briefing of passengers has every topic that the leg asks for.</summary>
internal sealed class Briefing : ICheck
{
    /// <summary>Topics of every leg, by the name of their part.</summary>
    private static readonly ImmutableArray<string> Always = ["smoking", "belts", "seat backs", "doors", "survival equipment", "extinguishers"];

    /// <inheritdoc/>
    public string Id => "ADM-01";

    /// <inheritdoc/>
    public string Title => "Briefing of passengers";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Operator: briefing topics", "Land"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var asked = Always.Where(topic => ruling.Condition(topic) is not null).Select(topic => (Topic: topic, By: ruling.Condition(topic))).ToList();
        if (ruling.AmountOrNone("oxygen") is { } above && leg.Plan.Profile.Highest.Value > above.Value)
        {
            asked.Add(("oxygen", above));
        }

        if (ruling.AmountOrNone("ditching") is { } far && leg.Water.Any(point => point.ShoreNm > far.Value) && !leg.Week.Plan.Input.Land.IsEmpty)
        {
            asked.Add(("ditching", far));
        }

        var topics = leg.Operator.BriefingTopics;
        var isWaterOpen = ruling.AmountOrNone("ditching") is not null
            && leg.Week.Plan.Input.Land.IsEmpty
            && !topics.Contains("ditching", StringComparer.OrdinalIgnoreCase);
        var cell = leg.Operator.Cells.GetValueOrDefault("Briefing topics", "");
        if (topics.IsEmpty)
        {
            yield return ruling.NotChecked($"the topics of the operator's briefing are not given (Operator sheet, Briefing topics); this leg asks for {Words.List(asked.Select(one => one.Topic))}");
            yield break;
        }

        var left = asked.Where(one => !topics.Contains(one.Topic, StringComparer.OrdinalIgnoreCase)).ToImmutableArray();
        if (isWaterOpen)
        {
            yield return ruling.NotChecked(
                "the book has no Land sheet, so whether the leg asks for a ditching briefing is not known, and the operator's briefing has none", cell);
        }
        else if (left.IsEmpty)
        {
            yield return ruling.Pass($"The briefing has what this leg asks for: {Words.List(asked.Select(one => one.Topic))}.");
        }

        foreach (var (topic, by) in left)
        {
            yield return ruling.Trips(by, $"The operator's briefing of passengers has no {topic}, and this leg asks for it{(topic == "oxygen" ? $": it flies at {Words.Amount(leg.Plan.Profile.Highest)}" : topic == "ditching" ? $": it goes more than {Words.Amount(by?.Value ?? 0, "NM")} from land" : "")}.", cell);
        }
    }
}
