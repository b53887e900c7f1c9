using System.Xml;
using Batch.Books.Cells;
using Batch.Books.Files;
using Batch.Books.Headers;
using Batch.Books.Import;
using Batch.Books.Links;
using Batch.Books.Sheets;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Books;

/// <summary>
/// Takes airports, runways, fixes and airways from open-data lists into an operator book, so that nobody types coordinates. Rows that are not there are added;
/// what is there is compared, and changed only when asked. All else in the book stays as it was.
/// </summary>
public static class BookImport
{
    /// <summary>Does it.</summary>
    /// <param name="request">What is wanted.</param>
    /// <exception cref="BookException">A list or the book cannot be used, or the book is open in another program.</exception>
    public static ImportReport Run(ImportRequest request)
    {
        if (request.TimeZone.Length > 0 && DateTimeZoneProviders.Tzdb.GetZoneOrNull(request.TimeZone) is null)
            throw new BookException($"{request.TimeZone} is not an IANA time zone, such as Atlantic/Azores");
        var file = Book(request);
        var name = Path.GetFileName(Path.TrimEndingDirectorySeparator(file.Path));
        var notes = new ImportNotes();
        try
        {
            ImportBook book = file.IsWorkbook ? new WorkbookImport(file.Path) : new CsvImport(file);
            var shelf = new Shelf([book.Raw], new Complaints());
            OperatorSheet.Read(shelf, out _);
            var sheets = Sheets(request, shelf, book, notes);
            var report = new ImportReport { Sheets = sheets, LeftOut = notes.LeftOut, Notes = notes.Notes };
            if (request.IsPreview || sheets.All(sheet => sheet.Added.IsEmpty && sheet.Updated == 0)) return report;
            var (written, backup) = book.Save();
            return report with { Written = written, Backup = backup };
        }
        catch (Exception thrown) when (thrown is XmlException or InvalidDataException)
        {
            throw new BookException($"{name} cannot be changed: {thrown.Message.TrimEnd('.')}; open it in a spreadsheet program and save it", thrown);
        }
    }

    private static ImmutableArray<ImportedSheet> Sheets(ImportRequest request, Shelf shelf, ImportBook book, ImportNotes notes)
    {
        var airports = AirportsSheet.Read(shelf);
        var places = airports.Names.Select(airports.Find).OfType<Airport>()
            .ToDictionary(airport => airport.Ident, airport => airport.Position, StringComparer.OrdinalIgnoreCase);
        ImportedSheet Bring(SheetPlan plan, IEnumerable<ImportRow> rows, params string[] keys) =>
            BringInto(request, shelf, book, notes, plan, rows, [.. keys.Select(key => plan.Columns.First(column => column.Name == key))]);
        if (request.Kind == ImportKind.Fixes)
            return [Bring(FixesSheet.Plan, new PointList(request, FixesSheet.Plan, notes).Rows([.. FixesSheet.Plan.Columns.Take(1)], places), "Ident")];
        if (request.Kind == ImportKind.Airways) return [Bring(AirwaysSheet.Plan,
            new PointList(request, AirwaysSheet.Plan, notes).Rows([.. AirwaysSheet.Plan.Columns.Take(2)], places), "Airway", "Sequence")];
        var list = new AirportList(request, places, notes).Rows();
        var brought = Bring(AirportsSheet.Plan, list.Select(entry => entry.Row), "Ident");
        SuggestZones(request, list.Where(entry => brought.Added.Contains(entry.Ident)), airports, notes);
        if (request.Runways is not { } runways) return [brought];
        var idents = list.Select(entry => entry.Ident).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [brought, Bring(RunwaysSheet.Plan, new RunwayList(runways, notes).Rows(idents), "Airport", "Runway")];
    }

    private static ImportedSheet BringInto(ImportRequest request, Shelf shelf, ImportBook book, ImportNotes notes, SheetPlan plan, IEnumerable<ImportRow> rows,
        ImmutableArray<Column> keys)
    {
        var sheet = book.Raw.Sheets.FirstOrDefault(sheet => HeaderText.Plain(sheet.Name) == HeaderText.Plain(plan.Name))
            ?? throw new BookException($"{book.Raw.Name} has no sheet {plan.Name}; 'tripbatch new' shows what it looks like");
        var complaints = new Complaints();
        var header = HeaderMatch.Find(sheet, plan, shelf.Defaults(0), complaints);
        if (header is null || keys.Any(key => !header.Placed.ContainsKey(key)))
            throw new BookException($"{sheet.Place} has no header row with {string.Join(", ", keys.Select(key => key.Name))}");
        var target = book.Open(sheet, sheet.Rows.Where(row => row.Number > header.Row).Select(row => row.Number).LastOrDefault());
        var import = new SheetImport(sheet, header, target, keys, notes);
        var last = import.Last;
        var brought = import.Bring(rows, request.Updates);
        book.Close(sheet, target, (last, import.Last), notes);
        return brought;
    }

    // A position does not tell its time zone: the nearest airport of the book is a hint, not an answer.
    private static void SuggestZones(
        ImportRequest request, IEnumerable<(ImportRow Row, string Ident, GeoPoint At)> added, Register<Airport> airports, ImportNotes notes)
    {
        if (request.TimeZone.Length > 0) return;
        const int MostNamed = 6;
        var known = airports.Names.Select(airports.Find).OfType<Airport>().ToArray();
        var hints = added.Select(entry => entry.Ident + Hint(entry.At, known)).ToArray();
        if (hints.Length == 0) return;
        var named = string.Join(", ", hints.Take(MostNamed))
            + (hints.Length > MostNamed ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $" and {hints.Length - MostNamed} more") : "");
        notes.Say($"the list has no time zones, and an airport cannot be used without one: {named}. Fill the cells, or give --time-zone NAME for all that are added.");
    }

    private static string Hint(GeoPoint at, Airport[] known)
    {
        if (known.Length == 0) return "";
        var (airport, miles) = known.Select(airport => (Airport: airport, Miles: Geodesic.Inverse(at, airport.Position).DistanceM / 1852))
            .MinBy(pair => pair.Miles);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $" ({airport.Ident}, {miles:0} NM away, has {airport.Zone.Id})");
    }

    private static BookFile Book(ImportRequest request)
    {
        var sheet = request.Kind.ToString();
        var files = BookFiles.Of([request.Book]);
        if (files.Length == 1) return files[0];
        var found = files.FirstOrDefault(file => file.Read(0).Sheets.Any(other => HeaderText.Plain(other.Name) == HeaderText.Plain(sheet)));
        return found ?? throw new BookException($"no workbook in {request.Book} has a sheet {sheet}");
    }
}
