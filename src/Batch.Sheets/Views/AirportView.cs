using Batch.Flight.Fleet;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Views;

/// <summary>An airport, as printed.</summary>
internal sealed record AirportView : IPrintable
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    [Value("Location indicator")]
    public required string Ident { get; init; }

    [Value("Name")]
    public string Name { get; init; } = "";

    [Value("Elevation")]
    public Quantity? Elevation { get; init; }

    [Value("Clearance delivery frequency as in the book")]
    public string ClearanceFrequency { get; init; } = "";

    [Value("Tower or common traffic frequency as in the book")]
    public string TowerFrequency { get; init; } = "";

    [Value("Handling agent")]
    public string Handler { get; init; } = "";

    [Value("Mail address of the handling agent")]
    public string HandlerMail { get; init; } = "";

    [Value("Lighting as in the book")]
    public string Lighting { get; init; } = "";

    [Value("Local opening hours, such as 06:00–22:00; nothing where always open or not said")]
    public string Hours { get; init; } = "";

    [Value("Local quiet hours, such as 23:00–06:00")]
    public string QuietHours { get; init; } = "";

    [Value("Kind of the best published instrument approach")]
    public string Approach { get; init; } = "";

    [Value("Customs service as in the book")]
    public string Customs { get; init; } = "";

    [Value("Fuels sold, in words; nothing where the book does not say")]
    public string Fuels { get; init; } = "";

    [Value("Identifier of the time zone")]
    public string Zone { get; init; } = "";

    public static AirportView Named(string ident) => new() { Ident = ident };

    public static AirportView Of(Airport airport) => new()
    {
        Ident = airport.Ident,
        Name = airport.Name,
        Elevation = Quantity.Of(airport.Elevation),
        ClearanceFrequency = airport.ClearanceFrequency,
        TowerFrequency = airport.TowerFrequency,
        Handler = airport.Handler,
        HandlerMail = airport.HandlerMail,
        Lighting = airport.Lighting,
        Hours = Between(airport.Opens, airport.Closes),
        QuietHours = Between(airport.QuietFrom, airport.QuietTo),
        Approach = airport.ApproachKind,
        Customs = airport.Customs,
        Fuels = airport.FuelsSold is { } sold ? sold.IsEmpty ? "none" : string.Join(", ", sold.Select(Words.Of)) : "",
        Zone = airport.Zone.Id,
    };

    public override string ToString() => Ident;

    private static string Between(LocalTime? from, LocalTime? to) => (from, to) switch
    {
        ({ } start, { } end) => Clock.Format(start) + "–" + Clock.Format(end),
        ({ } start, null) => "from " + Clock.Format(start),
        (null, { } end) => "until " + Clock.Format(end),
        (null, null) => "",
    };
}
