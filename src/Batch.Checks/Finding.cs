namespace Batch.Checks;

/// <summary>The answer of one check on one leg, with what an inspector asks for.</summary>
public sealed record Finding
{
    /// <summary>Stable id of the check, such as <c>FUEL-03</c>.</summary>
    public required string Check { get; init; }

    /// <summary>Title of the check in plain English.</summary>
    public required string Title { get; init; }

    /// <summary>The answer.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>One sentence with the numbers; names no person.</summary>
    public required string Text { get; init; }

    /// <summary>What is required, in <see cref="Unit"/>; null where the condition is not a number.</summary>
    public double? Required { get; init; }

    /// <summary>What is planned, in <see cref="Unit"/>.</summary>
    public double? Actual { get; init; }

    /// <summary>How far inside the limit [<see cref="Unit"/>]; negative beyond it; null where the condition is not a number.</summary>
    public double? Margin { get; init; }

    /// <summary>
    /// Whether <see cref="Required"/> is a least value (the margin is what is there less the limit) or a greatest one; null where the three are no limit,
    /// figure and difference, such as a date with the days left.
    /// </summary>
    public bool? IsLeast => Required is { } limit && Actual is { } actual && Margin is { } margin
        ? Same(margin, actual - limit) ? true : Same(margin, limit - actual) ? false : null
        : null;

    /// <summary>The numbers as they are printed, so that they agree; null where <see cref="IsLeast"/> is.</summary>
    /// <param name="perUnit">Steps in a unit; see <see cref="PrintedTrio.Of"/>.</param>
    public PrintedTrio? Printed(double perUnit) => IsLeast is { } isLeast
        ? PrintedTrio.Of(Required ?? 0, Actual ?? 0, isLeast, Margin >= -Rules.Ruling.Noise, perUnit)
        : null;

    /// <summary>
    /// The numbers as tables print them: as in <see cref="Text"/>, and hours that the text writes as on a clock in hundredths; null where not known.
    /// </summary>
    public (double? Required, double? Actual, double? Margin) Numbers => Printed(PrintedTrio.StepsPer(Unit,
        Math.Max(Math.Abs(Required ?? 0), Math.Abs(Actual ?? 0))) is var steps && Unit == "h" && steps > 10 ? 100 : steps) is { } printed
        ? (printed.Limit, printed.Actual, printed.Margin)
        : (Required, Actual, Margin);

    private static bool Same(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(1, Math.Abs(one));

    /// <summary>
    /// What the margin is a share of, where that is not the limit itself: for a centre of gravity the width between its limits [<see cref="Unit"/>]; null for
    /// the limit.
    /// </summary>
    public double? Span { get; init; }

    /// <summary>
    /// The margin as a share of the limit or the span, comparable between units; negative beyond the limit; null where there is no margin or the limit is
    /// nought, as with days left.
    /// </summary>
    public double? Share => Margin is { } margin && (Span ?? Required) is { } whole && whole != 0 ? margin / Math.Abs(whole) : null;

    /// <summary>Unit of the numbers: lb, ft, in, min, persons; empty where there are none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Document and paragraph.</summary>
    public required string Citation { get; init; }

    /// <summary>Whether the basis of the amount is still to be confirmed (from memory or seen in a secondary source only).</summary>
    public bool IsBasisUnconfirmed { get; init; }

    /// <summary>Cells that the answer depends on.</summary>
    public ImmutableArray<string> Cells { get; init; } = [];

    /// <summary>Who can act: dispatcher, captain, chief pilot, maintenance, ramp.</summary>
    public string Actor { get; init; } = "dispatcher";

    /// <summary>The operator's reason where the Checks sheet makes the answer or its limit milder than the rule; empty where it does not.</summary>
    public string Loosened { get; init; } = "";

    /// <summary>Changes that make it pass, least disruptive first.</summary>
    public ImmutableArray<Remedy> Remedies { get; init; } = [];

    /// <summary>How many changed plans were tried in search of remedies; null where none were looked for.</summary>
    public int? Replans { get; init; }

    /// <summary>What is said where remedies were looked for and none was found; empty where there are some or none were looked for.</summary>
    public string NoRemedy => Remedies.IsEmpty && Replans is { } replans
        ? replans == 0
            ? "No change of the plan is known that makes it pass."
            : $"No change that makes it pass was found within {replans.ToString(System.Globalization.CultureInfo.InvariantCulture)} plans tried."
        : "";
}
