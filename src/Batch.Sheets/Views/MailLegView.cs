using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One leg in a mail.</summary>
internal sealed record MailLegView
{
    [Value("Trip and leg number, such as T101/1; the place of the row where they could not be read")]
    public required string Key { get; init; }

    [Value("Name of the trip")]
    public required string Trip { get; init; }

    [Value("The person's seat: captain or second pilot")]
    public required string Seat { get; init; }

    [Value("Registration as in the book")]
    public required string Aircraft { get; init; }

    [Value("Departure as in the book")]
    public required string From { get; init; }

    [Value("Destination as in the book")]
    public required string To { get; init; }

    [Value("Off blocks; nothing where not known")]
    public required ClockTime? OffBlocks { get; init; }

    [Value("On blocks; nothing where not known")]
    public required ClockTime? OnBlocks { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("What fails, or why the leg was not planned, one sentence each")]
    public required ImmutableArray<string> Failures { get; init; }

    [Value("What asks for a decision, one sentence each")]
    public required ImmutableArray<string> Cautions { get; init; }

    [Value("Why the leg is sent although it fails; nothing where nobody decided so")]
    public required string OverrideReason { get; init; }

    public static MailLegView Of(LetterLeg leg) => new()
    {
        Key = leg.Key,
        Trip = leg.Trip,
        Seat = leg.IsCaptain ? "captain" : "second pilot",
        Aircraft = leg.Aircraft,
        From = leg.From.Length == 0 ? "?" : leg.From,
        To = leg.To.Length == 0 ? "?" : leg.To,
        OffBlocks = leg.OffBlocks is { } off ? new ClockTime(off, leg.FromZone) : null,
        OnBlocks = leg.OnBlocks is { } on ? new ClockTime(on, leg.ToZone) : null,
        State = StateView.Of(leg.State),
        Failures = leg.Failures,
        Cautions = leg.Cautions,
        OverrideReason = leg.OverrideReason,
    };
}
