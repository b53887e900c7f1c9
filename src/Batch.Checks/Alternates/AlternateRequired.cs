using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>Whether the leg may do without an alternate.</summary>
internal sealed class AlternateRequired : ICheck
{
    private static readonly Duration Window = Duration.FromHours(1);

    /// <inheritdoc/>
    public string Id => "ALT-02";

    /// <inheritdoc/>
    public string Title => "Alternate required";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Legs: alternate", "else Bulletins: forecast at the destination", "else Airports: instrument approach",
        "else Airports: approach minimum", "else Airports: approach visibility", "else Runways"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return Answer(leg, ruling);
    }

    private static Finding Answer(LegUnderCheck leg, Ruling ruling)
    {
        var to = leg.Plan.To;
        if (!leg.Plan.Alternates.IsEmpty)
        {
            return ruling.Pass(
                $"{Words.List(leg.Plan.Alternates.Select(alternate => alternate.Airport))} {(leg.Plan.Alternates.Length == 1 ? "is" : "are")} filed.", null,
                leg.Cell(nameof(Leg.Alternate)));
        }

        Finding Needed(string why, RuleAmount? by = null, params string[] cells) =>
            ruling.Trips(by, $"No alternate is filed, and one is required: {why}.", [leg.Cell(nameof(Leg.Alternate)), .. cells]);

        if (string.Equals(to.ApproachKind.Trim(), "none", StringComparison.OrdinalIgnoreCase))
        {
            return Needed($"{to.Ident} has no instrument approach", null, to.Origin.Cell(nameof(Airport.ApproachKind)));
        }

        if (ruling.AmountOrNone("flight time") is { } longest && leg.Plan.Times.Air.TotalHours > longest.Value)
        {
            return Needed($"the flight of {Words.Time(leg.Plan.Times.Air)} is longer than {Words.Amount(longest.Value, "h")}", longest);
        }

        if (ruling.AmountOrNone("separate runways") is { } separate && SeparateRunways(to) < separate.Value)
        {
            return Needed(
                $"{to.Ident} has {Words.Count(SeparateRunways(to), "runway", "runways")}, and {Words.Amount(separate.Value, "")} separate ones are asked for",
                separate, to.Origin.Cell(""));
        }

        if (to.ApproachKind.Trim().Length == 0 || to.ApproachMinimum is null || to.ApproachVisibilityM is null)
        {
            return Needed($"that none is needed cannot be shown while the instrument approach at {to.Ident} and its minima are not given", null,
                to.Origin.Cell(nameof(Airport.ApproachMinimum)));
        }

        var landing = leg.Plan.Times.Landing;
        return leg.Forecasts.WorstBetween(to.Ident, landing - Window, landing + Window) is { } worst
            ? ByForecast(leg, ruling, worst, Needed)
            : Needed($"no forecast for {to.Ident} from one hour before to one hour after the landing is in the Bulletins that would show that none is needed");
    }

    private static Finding ByForecast(LegUnderCheck leg, Ruling ruling, ForecastPeriod worst, Func<string, RuleAmount?, string[], Finding> needed)
    {
        var to = leg.Plan.To;
        var (ceiling, ceilingBy) = CeilingAskedFor(to, ruling);
        var (visibility, visibilityBy) = VisibilityAskedFor(to, ruling);
        if (worst.Ceiling is { } forecast && forecast.Value < ceiling)
        {
            return needed($"the lowest forecast ceiling at {to.Ident} within an hour of the landing ({Words.Local(leg.Plan.Times.Landing, to.Zone)}) is {Words.Amount(forecast)}, below {Words.Amount(ceiling, "ft")}", ceilingBy, []) with
            {
                Required = ceiling,
                Actual = forecast.Value,
                Margin = forecast.Value - ceiling,
                Unit = "ft",
            };
        }

        if (worst.VisibilityMetres < visibility)
        {
            return needed($"the lowest forecast visibility at {to.Ident} within an hour of the landing ({Words.Local(leg.Plan.Times.Landing, to.Zone)}) is {Words.Visibility(worst.VisibilityMetres)}, below {Words.Visibility(visibility)}", visibilityBy, []) with
            {
                Required = visibility,
                Actual = worst.VisibilityMetres,
                Margin = worst.VisibilityMetres - visibility,
                Unit = "m",
            };
        }

        var circling = ruling.AmountOrNone("ceiling above the approach minimum") is { } beyond
            ? $" Not looked at: a circling minimum higher than the minimum of the Airports sheet ({beyond.Citation})."
            : "";
        return ruling.Pass($"No alternate is required: within an hour of the landing {to.Ident} is forecast with at least {Words.Amount(ceiling, "ft")} of ceiling and {Words.Visibility(visibility)} of visibility.{circling}");
    }

    /// <summary>Ceiling above the airport that waives the alternate under every rule that holds [ft].</summary>
    private static (double Feet, RuleAmount? By) CeilingAskedFor(Airport to, Ruling ruling)
    {
        var fixedCeiling = ruling.AmountOrNone("ceiling above the airport");
        var beyond = ruling.AmountOrNone("ceiling above the approach minimum");
        var byMinimum = beyond is null ? 0 : (to.ApproachMinimum?.Value ?? 0) + beyond.Value;
        return byMinimum > (fixedCeiling?.Value ?? 0) ? (byMinimum, beyond) : (fixedCeiling?.Value ?? 0, fixedCeiling);
    }

    /// <summary>Visibility that waives the alternate under every rule that holds [m].</summary>
    private static (double Metres, RuleAmount? By) VisibilityAskedFor(Airport to, Ruling ruling)
    {
        var fixedVisibility = ruling.AmountOrNone("visibility");
        var beyond = ruling.AmountOrNone("visibility beyond the approach minimum");
        var byMinimum = beyond is null ? 0 : (to.ApproachVisibilityM ?? 0) + Visibilities.Metres(beyond);
        var byValue = fixedVisibility is null ? 0 : Visibilities.Metres(fixedVisibility);
        return byMinimum > byValue ? (byMinimum, beyond) : (byValue, fixedVisibility);
    }

    /// <summary>Runways that differ by more than their direction of use.</summary>
    private static int SeparateRunways(Airport airport)
    {
        var seen = new List<Runway>();
        foreach (var runway in airport.Runways)
        {
            if (!seen.Any(other => IsReverse(other, runway)))
            {
                seen.Add(runway);
            }
        }

        return seen.Count;
    }

    private static bool IsReverse(Runway a, Runway b) =>
        Math.Abs(Math.IEEERemainder(a.TrueBearing.Value - b.TrueBearing.Value - 180, 360)) < 5 && Opposite(Suffix(a)) == Suffix(b);

    private static char Suffix(Runway runway) => runway.Ident.Length > 0 && char.IsLetter(runway.Ident[^1]) ? char.ToUpperInvariant(runway.Ident[^1]) : ' ';

    private static char Opposite(char suffix) => suffix switch
    {
        'L' => 'R',
        'R' => 'L',
        _ => suffix,
    };
}
