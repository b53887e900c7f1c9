using NodaTime.Text;

namespace Batch.Sheets;

/// <summary>
/// Where the sheets of a run stand in its folder: paths with forward slashes; those of sheets without the ending, because a sheet is a page and a print.
/// </summary>
public static class SheetPaths
{
    /// <summary>The week board.</summary>
    public const string Board = "index.html";

    /// <summary>Everything computed; a folder that holds it is that of a run.</summary>
    public const string Record = "run.json";

    /// <summary>The trip sheet, such as <c>sheets/T101</c>.</summary>
    /// <param name="trip">Name of the trip.</param>
    public static string Trip(string trip) => "sheets/" + SheetName.Of(trip);

    /// <summary>The packet of a person, such as <c>packets/ANA</c>.</summary>
    /// <param name="code">Code of the person.</param>
    public static string Packet(string code) => "packets/" + SheetName.Of(code);

    /// <summary>The calendar file of a person, such as <c>calendar/ANA</c>.</summary>
    /// <param name="code">Code of the person.</param>
    public static string Calendar(string code) => "calendar/" + SheetName.Of(code);

    /// <summary>The load sheet of an airport and day, such as <c>loads/XAND-2026-12-07</c>.</summary>
    /// <param name="airport">Ident of the airport.</param>
    /// <param name="day">Local day of off blocks.</param>
    public static string Load(string airport, LocalDate day) => "loads/" + SheetName.Of(airport) + "-" + LocalDatePattern.Iso.Format(day);
}
