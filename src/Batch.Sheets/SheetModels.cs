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

    /// <summary>Template of the crew packet.</summary>
    public const string CrewPacket = "crew-packet.html";

    /// <summary>Template of the load sheet and fuel order.</summary>
    public const string LoadSheet = "load-sheet.html";

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

    /// <summary>
    /// The values of one person's packet, for <see cref="CrewPacket"/>, without page numbers: those follow from the print, see <see cref="WithPages"/>.
    /// </summary>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="code">Code of the person, as in <see cref="People"/>.</param>
    /// <param name="paper">Paper size.</param>
    /// <exception cref="ArgumentException">Nobody of that code flies in the week.</exception>
    public static SheetModel Packet(CheckedWeek week, RunFacts facts, string code, PaperSize paper) => PacketModel.Of(week, facts, code, paper);

    /// <summary>The values of a packet's cover alone: the packet without the sheets of its trips, to print how many pages it takes.</summary>
    /// <param name="packet">Made by <see cref="Packet"/>.</param>
    /// <exception cref="ArgumentException">These are not the values of a packet.</exception>
    public static SheetModel Cover(SheetModel packet) => KnownPacket(packet) with { Trips = [] };

    /// <summary>
    /// Pages on which the places of a packet should begin, from the trip sheets printed on their own: a good guess where each trip begins a page of the packet.
    /// </summary>
    /// <param name="packet">Made by <see cref="Packet"/>.</param>
    /// <param name="coverPages">Pages before the first trip.</param>
    /// <param name="printed">For a trip the pages of its own sheet, and the page of each place in it; null where it was not printed.</param>
    /// <exception cref="ArgumentException">These are not the values of a packet.</exception>
    public static ImmutableDictionary<string, int> ExpectedPages(SheetModel packet, int coverPages,
        Func<string, (int Pages, IReadOnlyDictionary<string, int> Places)?> printed) =>
        KnownPacket(packet).ExpectedPages(coverPages, printed);

    /// <summary>The values of a packet with other page numbers.</summary>
    /// <param name="packet">Made by <see cref="Packet"/>.</param>
    /// <param name="pages">Page on which each place of the packet begins, 1 for the first, by the place's name.</param>
    /// <exception cref="ArgumentException">These are not the values of a packet.</exception>
    public static SheetModel WithPages(SheetModel packet, IReadOnlyDictionary<string, int> pages) => KnownPacket(packet).WithPages(pages);

    /// <summary>Whether the page numbers of a packet are these.</summary>
    /// <param name="packet">Made by <see cref="WithPages"/>.</param>
    /// <param name="pages">Page on which each place of the packet begins.</param>
    /// <exception cref="ArgumentException">These are not the values of a packet.</exception>
    public static bool HasPages(SheetModel packet, IReadOnlyDictionary<string, int> pages) => KnownPacket(packet).AgreesWith(pages);

    /// <summary>The values of the load sheet and fuel order of one airport and day, for <see cref="LoadSheet"/>.</summary>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="place">Airport and local day, as in <see cref="Departures"/>.</param>
    /// <param name="paper">Paper size.</param>
    /// <exception cref="ArgumentException">Nothing departs there on that day.</exception>
    public static SheetModel Load(CheckedWeek week, RunFacts facts, (string Airport, LocalDate Day) place, PaperSize paper) =>
        LoadModel.Of(week, facts, place.Airport, place.Day, paper);

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
        foreach (var place in Departures(week))
            yield return new SheetToRender(LoadSheet, Load(week, facts, place, paper), IsPrinted: true);
        foreach (var code in People(week))
            yield return new SheetToRender(CrewPacket, Numbered(Packet(week, facts, code, paper)), IsPrinted: true);
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
        .. People(week) is [var person, ..] ? [(CrewPacket, Numbered(Packet(week, facts, person, paper)))] : ImmutableArray<(string, SheetModel)>.Empty,
        .. Departures(week) is [var place, ..] ? [(LoadSheet, Load(week, facts, place, paper))] : ImmutableArray<(string, SheetModel)>.Empty,
        (MailHtml, Mail(ExampleLetter(week, facts))),
    ]);

    /// <summary>A packet with some page for every place.</summary>
    private static PacketModel Numbered(SheetModel packet)
    {
        var known = KnownPacket(packet);
        return known.WithPages(known.Contents.Where(trip => !trip.IsHeld).SelectMany(trip => trip.Legs.Select(leg => leg.Anchor).Prepend(trip.Anchor))
            .Distinct(StringComparer.Ordinal).ToDictionary(place => place, _ => 2));
    }

    /// <summary>A later issue with as much in it as can be, so that every value of a mail has an example.</summary>
    private static CrewLetter ExampleLetter(CheckedWeek week, RunFacts facts)
    {
        var letters = CrewLetters.Of(week, facts);
        var letter = letters.FirstOrDefault(letter => letter.Legs.Any(leg => !leg.Failures.IsEmpty))
            ?? letters.FirstOrDefault()
            ?? new CrewLetter { Operator = week.Plan.Input.Operator.Name, Code = "ABC", Facts = facts };
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
    public static ImmutableArray<string> Trips(CheckedWeek week) =>
        [.. week.Legs.Select(leg => leg.Plan.Key.Trip).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>
    /// Codes of the persons who fly in a week, in order; a person whose legs could not be planned is among them, a word that is no code of the Crew sheet is
    /// not, unless that sheet is empty.
    /// </summary>
    /// <param name="week">The checked week.</param>
    public static ImmutableArray<string> People(CheckedWeek week) =>
        [.. week.Legs.SelectMany(leg => LegPeople.Crew(leg.Plan)).Where(code => week.Plan.Input.Crew.IsEmpty || week.Plan.Input.Crew.ContainsKey(code))
            .Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Airports and local days from which something departs, in order of day; a leg whose departure or date could not be read is in none.</summary>
    /// <param name="week">The checked week.</param>
    public static ImmutableArray<(string Airport, LocalDate Day)> Departures(CheckedWeek week) =>
        [.. week.Legs.Select(leg => DeparturePlace.Of(leg.Plan, week.Plan.Input)).OfType<(string Airport, LocalDate Day)>().Distinct()
            .OrderBy(place => place.Day).ThenBy(place => place.Airport, StringComparer.Ordinal)];

    private static PacketModel KnownPacket(SheetModel packet) =>
        packet as PacketModel ?? throw new ArgumentException("These are not the values of a packet.", nameof(packet));
}
