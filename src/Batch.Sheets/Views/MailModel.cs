using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The values of the mail that carries a packet.</summary>
internal sealed record MailModel : SheetModel
{
    [Value("The operator")]
    public required OperatorView Operator { get; init; }

    [Value("What is known of the run")]
    public required RunView Run { get; init; }

    [Value("The person the mail goes to. Private")]
    public required PersonView Person { get; init; }

    [Value("Number of this issue to the person, 1 for the first")]
    public required int Revision { get; init; }

    [Value("The last issue that the person surely has, the number of this one where it is sent once more; nothing where there is none")]
    public required int? Since { get; init; }

    [Value("Later issues that may have reached the person; nothing where there are none")]
    public required ImmutableArray<int> Unsure { get; init; }

    [Value("What changed since the issue before, one sentence each; nothing for the first issue")]
    public required ImmutableArray<string> Changes { get; init; }

    [Value("Trips that are held back and not in the packet, one sentence each")]
    public required ImmutableArray<string> Held { get; init; }

    [Value("Names of the files attached")]
    public required ImmutableArray<string> Attachments { get; init; }

    [Value("The worst state of the legs")]
    public required StateView State { get; init; }

    [Value("Off blocks of the first leg; nothing where not known")]
    public required ClockTime? Begins { get; init; }

    [Value("On blocks of the last leg; nothing where not known")]
    public required ClockTime? Ends { get; init; }

    [Value("The person's legs in order of time; nothing where none is left")]
    public required ImmutableArray<MailLegView> Legs { get; init; }

    public static MailModel Of(CrewLetter letter)
    {
        ImmutableArray<MailLegView> legs = [.. letter.Legs.Select(MailLegView.Of)];
        return new MailModel
        {
            Operator = new OperatorView
            {
                Name = letter.Operator,
                Contact = letter.Contact,
                HomeBase = "",
                Language = letter.Language.Length == 0 ? "en" : letter.Language,
                WeightUnit = letter.WeightUnit.Name,
            },
            Run = new RunView
            {
                MadeAt = new ClockTime(letter.Facts.MadeAt, DateTimeZone.Utc),
                ToolVersion = letter.Facts.ToolVersion,
                RuleSet = letter.RuleSet,
                Books = [.. letter.Books.Select(BookView.Of)],
            },
            Person = new PersonView { Code = letter.Code, Name = letter.Name },
            Revision = letter.Revision,
            Since = letter.Since,
            Unsure = letter.Unsure,
            Changes = letter.Changes,
            Held = letter.Held,
            Attachments = letter.Attachments,
            State = StateView.Of(letter.State),
            Begins = legs.FirstOrDefault()?.OffBlocks,
            Ends = legs.LastOrDefault(leg => leg.OnBlocks is not null)?.OnBlocks,
            Legs = legs,
        };
    }
}
