using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One finding, as printed.</summary>
internal sealed record FindingView
{
    private const string NotChecked = "Not checked: ";

    [Value("Trip it belongs to")]
    public required string Trip { get; init; }

    [Value("Number of the leg it belongs to; 0 where it could not be read")]
    public required int Leg { get; init; }

    [Value("Row of the Legs sheet, for a leg whose number could not be read; nothing elsewhere")]
    public required int? Row { get; init; }

    [Value("Trip and leg number, such as T101/1; the place of the row where they could not be read")]
    public required string Key { get; init; }

    [Value("The name of the leg's place on the board, for links: # and this")]
    public required string Anchor { get; init; }

    [Value("From the departure to the destination, such as XAND–XBEL")]
    public required string Way { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("Id of the check")]
    public required string Check { get; init; }

    [Value("Title of the check")]
    public required string Title { get; init; }

    [Value("The finding in one sentence with its numbers; for a check that was not made, what is missing")]
    public required string Text { get; init; }

    [Value("What is required, in unit; nothing where the condition is not a number")]
    public required Quantity? Required { get; init; }

    [Value("What is planned, in unit")]
    public required Quantity? Actual { get; init; }

    [Value("How far inside the limit, in unit; negative beyond it; rounded down")]
    public required Quantity? Margin { get; init; }

    [Value("Unit of required, actual and margin")]
    public required string Unit { get; init; }

    [Value("Document and paragraph")]
    public required string Citation { get; init; }

    [Value("Whether the basis of the amount is still to be confirmed")]
    public required bool IsBasisUnconfirmed { get; init; }

    [Value("Cells that it depends on")]
    public required ImmutableArray<string> Cells { get; init; }

    [Value("Who can act")]
    public required string Actor { get; init; }

    [Value("Changes that make it pass, least disruptive first")]
    public required ImmutableArray<string> Remedies { get; init; }

    /// <summary>The state stands beside the sentence already.</summary>
    private static string WithoutState(string text) =>
        text.StartsWith(NotChecked, StringComparison.Ordinal) && text.Length > NotChecked.Length
            ? char.ToUpperInvariant(text[NotChecked.Length]) + text[(NotChecked.Length + 1)..]
            : text;

    public static FindingView Of(CheckedLeg leg, Finding finding) => Of(leg.Plan, finding);

    public static FindingView Of(LegPlan plan, Finding finding)
    {
        var (required, actual, margin) = Figures(finding);
        return new FindingView
        {
            Trip = plan.Key.Trip,
            Leg = plan.Key.Number,
            Row = plan.Key.Row > 0 ? plan.Key.Row : null,
            Key = LegWay.Key(plan),
            Anchor = LegWay.Anchor(plan),
            Way = LegWay.Of(plan),
            State = StateView.Of(finding.Verdict),
            Check = finding.Check,
            Title = finding.Title,
            Text = WithoutState(finding.Text),
            Required = required,
            Actual = actual,
            Margin = margin,
            Unit = finding.Unit,
            Citation = finding.Citation,
            IsBasisUnconfirmed = finding.IsBasisUnconfirmed,
            Cells = finding.Cells,
            Actor = finding.Actor,
            Remedies = finding.NoRemedy.Length > 0 ? [finding.NoRemedy] : [.. finding.Remedies.Select(remedy => remedy.Text)],
        };
    }

    private static (Quantity? Required, Quantity? Actual, Quantity? Margin) Figures(Finding finding) =>
        Quantity.OfPlain(finding.Required, finding.Unit) is { } limit
            && Quantity.OfPlain(finding.Actual, finding.Unit) is { } there
            && finding.IsLeast is { } isLeast
            ? Quantity.Trio(limit, there, isLeast)
            : (
                Quantity.OfPlain(finding.Required, finding.Unit),
                Quantity.OfPlain(finding.Actual, finding.Unit),
                finding.Margin is { } margin ? new Quantity(margin, QuantityKind.Plain, RoundingWay.Down) { PlainUnit = finding.Unit, IsSigned = true } : null);
}
