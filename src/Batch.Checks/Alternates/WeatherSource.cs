using Batch.Checks.Rules;

namespace Batch.Checks.Alternates;

/// <summary>Age and source of the forecasts that the leg rests on.</summary>
internal sealed class WeatherSource : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-07";

    /// <inheritdoc/>
    public string Title => "Weather age and source";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast", "Bulletins: forecast at the alternate", "Bulletins: forecast at the takeoff alternate",
        "Bulletins: time of issue", "Bulletins: source", "Operator: weather sources"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["age of a forecast"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        foreach (var (airport, word) in Airports(leg).DistinctBy(place => place.Ident, StringComparer.OrdinalIgnoreCase))
        {
            if (leg.Forecasts.Issues.GetValueOrDefault(airport) is not { } issue)
            {
                yield return ruling.NotChecked($"no forecast for {airport}{word} is in the books");
                continue;
            }

            if (ruling.AmountOrNone("age of a forecast") is { } oldest)
            {
                yield return Age(leg, ruling, airport, issue, oldest);
            }

            if (ruling.Condition("source") is { } source)
            {
                yield return Source(leg, ruling, airport, issue, source);
            }
        }
    }

    /// <summary>Where the leg may land, each with what it is to the leg.</summary>
    private static IEnumerable<(string Ident, string Word)> Airports(LegUnderCheck leg)
    {
        yield return (leg.Plan.To.Ident, "");
        foreach (var alternate in leg.Plan.Alternates)
        {
            yield return (alternate.Airport, leg.Plan.Alternates.Length == 1 ? ", the alternate," : ", an alternate,");
        }

        if (leg.Plan.Leg.TakeoffAlternate is { Length: > 0 } takeoffAlternate)
        {
            yield return (takeoffAlternate, ", the takeoff alternate,");
        }
    }

    private static Finding Age(LegUnderCheck leg, Ruling ruling, string airport, ForecastIssue issue, RuleAmount oldest)
    {
        if (issue.Issued is not { } issued)
        {
            return ruling.NotChecked($"when the forecast for {airport} was issued is not said", issue.Cell);
        }

        var age = leg.Plan.Times.Takeoff - issued;
        var answer = age.TotalHours <= oldest.Value + Ruling.Noise
            ? ruling.Pass($"The forecast for {airport} is {Words.Time(age)} old at the takeoff.", oldest, issue.Cell)
            : ruling.Trips(oldest, $"The forecast for {airport} will be {Words.Time(age)} old at the takeoff, more than {Words.Amount(oldest.Value, "h")}: get the newest one before.", issue.Cell);
        return answer with { Required = oldest.Value, Actual = age.TotalHours, Margin = oldest.Value - age.TotalHours, Unit = "h" };
    }

    private static Finding Source(LegUnderCheck leg, Ruling ruling, string airport, ForecastIssue issue, RuleAmount by)
    {
        var approved = leg.Operator.WeatherSources;
        return approved.IsEmpty ? ruling.NotChecked("the weather sources that the operator may use are not given (Operator sheet, Weather sources)")
            : issue.Source.Length == 0 ? ruling.NotChecked($"the source of the forecast for {airport} is not given", issue.Cell)
            : approved.Contains(issue.Source, StringComparer.OrdinalIgnoreCase)
                ? ruling.Pass($"The forecast for {airport} comes from {issue.Source}, a source that the operator may use.", by, issue.Cell)
            : ruling.Trips(by,
                $"The forecast for {airport} comes from {issue.Source}, which is not among the operator's weather sources: {Words.List(approved)}.",
                issue.Cell);
    }
}
