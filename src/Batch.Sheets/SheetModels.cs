using Batch.Checks;
using Batch.Sheets.Views;

namespace Batch.Sheets;

/// <summary>Makes the values that templates use.</summary>
public static class SheetModels
{
    /// <summary>Template of the trip sheet.</summary>
    public const string TripSheet = "trip-sheet.html";

    /// <summary>Template of the week board.</summary>
    public const string WeekBoard = "week-board.html";

    /// <summary>Template of the page that lists everything a template can use.</summary>
    public const string ValuesPage = "template-values.html";

    /// <summary>Template of the mail that carries a packet, as HTML.</summary>
    public const string MailHtml = "mail.html";

    /// <summary>Template of the same mail as plain text; its first line gives the subject.</summary>
    public const string MailText = "mail.txt";

    /// <summary>The values of one trip's sheet, for <see cref="TripSheet"/>.</summary>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="trip">Name of the trip.</param>
    /// <param name="paper">Paper size.</param>
    /// <exception cref="ArgumentException">The week has no such trip.</exception>
    public static SheetModel Trip(CheckedWeek week, RunFacts facts, string trip, PaperSize paper) => TripModel.Of(week, facts, trip, paper);

    /// <summary>The values of the week board, for <see cref="WeekBoard"/>.</summary>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="paper">Paper size.</param>
    /// <param name="hasPdf">Whether the sheets are printed too, so that the board may link to them.</param>
    public static SheetModel Board(CheckedWeek week, RunFacts facts, PaperSize paper, bool hasPdf = true) => BoardModel.Of(week, facts, paper, hasPdf);

    /// <summary>The values of a mail, for <see cref="MailHtml"/> and <see cref="MailText"/>.</summary>
    /// <param name="letter">What the mail says.</param>
    public static SheetModel Mail(CrewLetter letter) => MailModel.Of(letter);

    /// <summary>Every sheet of a week with its template: what there is to render.</summary>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="paper">Paper size.</param>
    public static IEnumerable<SheetToRender> All(CheckedWeek week, RunFacts facts, PaperSize paper)
    {
        foreach (var trip in Trips(week))
            yield return new SheetToRender(TripSheet, Trip(week, facts, trip, paper), IsPrinted: true);
        yield return new SheetToRender(WeekBoard, Board(week, facts, paper), IsPrinted: false);
        yield return new SheetToRender(ValuesPage, Values(week, facts, paper), IsPrinted: true);
        foreach (var letter in CrewLetters.Of(week, facts).Append(ExampleLetter(week, facts)))
        {
            yield return new SheetToRender(MailHtml, Mail(letter), IsPrinted: false);
            yield return new SheetToRender(MailText, Mail(letter), IsPrinted: false);
        }
    }

    /// <summary>The values of the page that lists what templates can use, for <see cref="ValuesPage"/>; its examples are those of a week.</summary>
    /// <param name="week">A checked week with as much in it as can be.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="paper">Paper size.</param>
    /// <exception cref="ArgumentException">The week has no trip.</exception>
    public static SheetModel Values(CheckedWeek week, RunFacts facts, PaperSize paper) => ValuesModel.Of(facts, paper,
    [
        (TripSheet, Trip(week, facts, Trips(week) is [var first, ..] ? first : "", paper)),
        (WeekBoard, Board(week, facts, paper)),
        (MailHtml, Mail(ExampleLetter(week, facts))),
    ]);

    /// <summary>A later issue with as much in it as can be, so that every value of a mail has an example.</summary>
    private static CrewLetter ExampleLetter(CheckedWeek week, RunFacts facts)
    {
        var letters = CrewLetters.Of(week, facts);
        var letter = letters.FirstOrDefault(letter => letter.Legs.Any(leg => !leg.Failures.IsEmpty)) ?? letters.FirstOrDefault() ?? new CrewLetter { Operator = week.Plan.Input.Operator.Name, Code = "ABC", Facts = facts };
        return letter with
        {
            Revision = 2,
            Changes = ["T101/1: passengers 3 to 4."],
            Attachments = ["packet.pdf"],
            Legs = [.. letter.Legs.Select(leg => leg.Failures.IsEmpty ? leg : leg with { OverrideReason = "the chief pilot accepts it" })],
        };
    }

    /// <summary>Names of the trips of a week, in order.</summary>
    /// <param name="week">The checked week.</param>
    public static ImmutableArray<string> Trips(CheckedWeek week) => [.. week.Legs.Select(leg => leg.Plan.Key.Trip).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
