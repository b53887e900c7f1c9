using System.CommandLine;
using System.Globalization;
using Batch.Books;
using Batch.Cli.Pipeline;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch import</c>: airports, runways, fixes and airways from open-data lists into the operator book.</summary>
internal static class ImportCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    public static Command Build(Terminal terminal) => new(
        "import",
        """
        Takes airports with their runways, fixes or airways from a list (csv) into the operator book, so that nobody types coordinates. Rows that are not there are
        added; cells that say something else than the list are shown, and changed only with --update. The book as it was is kept beside it as .bak.

        Examples:
          tripbatch import airports airports.csv operator.xlsx --runways runways.csv --only XAAA,XBBB
          tripbatch import fixes points.csv operator.xlsx --columns "Ident=ID,Latitude=Y,Longitude=X"
        """)
    {
        Airports(terminal),
        Points(terminal, ImportKind.Fixes, "Takes named points from a csv file whose headers are those of the Fixes sheet (Ident, Latitude, Longitude, Kind, Name, Frequency), or are named with --columns."),
        Points(terminal, ImportKind.Airways, "Takes airways from a csv file whose headers are those of the Airways sheet (Airway, Sequence, Fix, Minimum altitude, Direction), or are named with --columns."),
    };

    private static Command Airports(Terminal terminal)
    {
        var (file, book, only, within, updates, preview) = Shared("Idents to take, separated by commas.");
        var runways = new Option<string?>("--runways") { Description = "The list of runways: those of the airports taken are taken too.", HelpName = "FILE" };
        var zone = new Option<string?>("--time-zone")
        {
            Description = "IANA time zone of the airports that are added; the lists do not have it.",
            HelpName = "NAME",
        };
        var command = new Command(
            "airports",
            """
            Takes airports from a list in the column layout of the public-domain world airport lists (ident, type, name, latitude_deg, longitude_deg, elevation_ft;
            runways: airport_ident, length_ft, surface, lighted, closed, le_ident, le_heading_degT, le_displaced_threshold_ft, he_ident, ...).
            Of a list of more than 500 only what --only or --within names; heliports, water and closed places only when named with --only.

            Examples:
              tripbatch import airports airports.csv operator.xlsx --runways runways.csv --only XAAA,XBBB
              tripbatch import airports airports.csv my-week --runways runways.csv --within 300 XONE --time-zone Atlantic/Azores
              tripbatch import airports airports.csv operator.xlsx --only XAAA --preview
            """)
        { file, book, runways, only, within, zone, updates, preview };
        command.SetAction(parsed => Run(terminal, Measured(parsed.GetValue(within), new ImportRequest
        {
            Kind = ImportKind.Airports,
            File = parsed.GetRequiredValue(file),
            Book = parsed.GetRequiredValue(book),
            Runways = parsed.GetValue(runways),
            Only = Words(parsed.GetValue(only)),
            TimeZone = parsed.GetValue(zone) ?? "",
            Updates = parsed.GetValue(updates),
            IsPreview = parsed.GetValue(preview),
        })));
        return command;
    }

    private static Command Points(Terminal terminal, ImportKind kind, string description)
    {
        var name = kind.ToString().ToLowerInvariant();
        var (file, book, only, within, updates, preview) = Shared(kind == ImportKind.Fixes
            ? "Idents to take, separated by commas."
            : "Names of airways to take, separated by commas.");
        var columns = new Option<string?>("--columns")
        {
            Description =
            "Which column of the list is which of ours, such as \"Ident=ID,Latitude=Y\". A unit may stand with ours: \"Minimum altitude [m]=MEA\".",
            HelpName = "OURS=THEIRS,..."
        };
        var command = new Command(
            name,
            description + (kind == ImportKind.Fixes
                ? "\n\nExamples:\n  tripbatch import fixes points.csv operator.xlsx --within 500 XONE\n  tripbatch import fixes points.csv operator.xlsx --columns \"Ident=ID,Latitude=Y,Longitude=X\""
                : "\n\nExamples:\n  tripbatch import airways ways.csv operator.xlsx --only V1,V2\n  tripbatch import airways ways.csv operator.xlsx --columns \"Airway=ROUTE,Sequence=NO,Fix=POINT\""))
        { file, book, columns, only, updates, preview };
        if (kind == ImportKind.Fixes) command.Add(within);
        command.SetAction(parsed => Run(terminal, Measured(kind == ImportKind.Fixes ? parsed.GetValue(within) : null, new ImportRequest
        {
            Kind = kind,
            File = parsed.GetRequiredValue(file),
            Book = parsed.GetRequiredValue(book),
            Only = Words(parsed.GetValue(only)),
            Columns = Pairs(parsed.GetValue(columns)),
            Updates = parsed.GetValue(updates),
            IsPreview = parsed.GetValue(preview),
        })));
        return command;
    }

    private static (Argument<string> File, Argument<string> Book, Option<string?> Only, Option<string[]?> Within, Option<bool> Updates,
        Option<bool> Preview) Shared(string only) =>
    (
        new Argument<string>("FILE") { Description = "The list, a csv file." },
        new Argument<string>("BOOK") { Description = "The operator book: a workbook (.xlsx), the folder it stands in, or a folder of csv files." },
        new Option<string?>("--only") { Description = only, HelpName = "NAME,..." },
        new Option<string[]?>("--within")
        {
            Description = "Takes what lies within so many nautical miles of an airport.",
            HelpName = "NM IDENT",
            Arity = new ArgumentArity(2, 2),
            AllowMultipleArgumentsPerToken = true
        },
        new Option<bool>("--update") { Description = "Sets cells that differ to what the list says." },
        new Option<bool>("--preview") { Description = "Shows what would be done and writes nothing." });

    private static ImportRequest Measured(string[]? within, ImportRequest request)
    {
        if (within is not [var miles, var ident]) return request;
        if (!double.TryParse(miles, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || number is not (> 0 and <= 20_000))
            throw new InputException($"--within {miles} {ident}: a distance in nautical miles and an ident were expected, such as --within 300 XONE.");
        return request with { Within = new NauticalMiles(number), Around = ident.ToUpperInvariant() };
    }

    private static ImmutableArray<string> Words(string? text) => [.. SharedArguments.Names(text).Select(word => word.ToUpperInvariant())];

    private static ImmutableDictionary<string, string> Pairs(string? text)
    {
        var pairs = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var pair in SharedArguments.Names(text))
        {
            if (pair.Split('=', 2, StringSplitOptions.TrimEntries) is not [{ Length: > 0 } ours, { Length: > 0 } theirs])
                throw new InputException($"--columns {pair}: a pair such as Ident=ID was expected.");
            pairs[ours] = theirs;
        }

        return pairs.ToImmutable();
    }

    private static int Run(Terminal terminal, ImportRequest request)
    {
        ImportReport report;
        try
        {
            report = BookImport.Run(request);
        }
        catch (BookException error)
        {
            throw new InputException(error.Message, error);
        }

        foreach (var line in report.LeftOut) terminal.Output.WriteLine("left out  " + line);
        foreach (var sheet in report.Sheets)
        {
            foreach (var difference in sheet.Differences) terminal.Output.WriteLine("differs   " + difference);
        }

        foreach (var note in report.Notes) terminal.Output.WriteLine("note      " + note);
        foreach (var sheet in report.Sheets) terminal.Output.WriteLine(Counts(sheet, request));
        terminal.Output.WriteLine(
            report.Written.Length > 0 ? $"Written: {report.Written}; the book as it was is {report.Backup}."
            : request.IsPreview ? "A preview: nothing was written."
            : "Nothing to add or change; the book was not touched.");
        return ExitStatus.AllPass;
    }

    private static string Counts(ImportedSheet sheet, ImportRequest request)
    {
        const int MostNamed = 20;
        var named = sheet.Added.Length == 0 ? "" : $" ({string.Join(", ", sheet.Added.Take(MostNamed))}{(sheet.Added.Length > MostNamed ? ", ..." : "")})";
        var differ = sheet.Differences.Length == 0 ? "" : string.Create(
            CultureInfo.InvariantCulture,
            $"; {sheet.Differences.Length} {(sheet.Differences.Length == 1 ? "cell differs" : "cells differ")}{(request.Updates ? $", {sheet.Updated} set to the list" : ", left as they are (--update takes the list's)")}");
        return string.Create(CultureInfo.InvariantCulture,
            $"{sheet.Name}: {sheet.Added.Length} added{named}, {sheet.Same} there already and the same{differ}.");
    }
}
