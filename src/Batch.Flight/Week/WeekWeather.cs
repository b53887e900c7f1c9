using Batch.Flight.Air;
using Batch.Flight.Air.Bulletins;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Flight.Week;

/// <summary>
/// The weather of a week: winds and temperatures from the Winds sheet and the winds-aloft bulletins, reports and forecasts at airports from the raw bulletins.
/// </summary>
public sealed class WeekWeather
{
    /// <summary>How long a report stands for the weather at its airport; common practice, no source.</summary>
    private static readonly Duration ReportHolds = Duration.FromMinutes(90);

    /// <summary>Height above the field up to which a wind of the Winds sheet stands for the wind at the ground [ft]; common practice, no source.</summary>
    private const double SurfaceFt = 500;

    /// <summary>Precipitation codes of WMO-No. 306 table 4678 that wet a runway.</summary>
    private static readonly ImmutableArray<string> Precipitation = ["DZ", "RA", "SN", "SG", "PL", "GR", "GS", "UP", "IC"];

    private readonly ILookup<string, TafReport> _forecasts;
    private readonly ILookup<string, MetarReport> _reports;
    private readonly double _warmerC;
    private readonly Dictionary<TafReport, RawBulletin> _bulletins;

    private WeekWeather(AirField air, ImmutableArray<TafReport> forecasts, ImmutableArray<MetarReport> reports, Dictionary<TafReport, RawBulletin> bulletins,
        ImmutableArray<Problem> problems)
    {
        Air = air;
        Forecasts = forecasts;
        Problems = problems;
        _bulletins = bulletins;
        _forecasts = forecasts.ToLookup(forecast => forecast.Station, StringComparer.OrdinalIgnoreCase);
        _reports = reports.ToLookup(report => report.Station, StringComparer.OrdinalIgnoreCase);
    }

    private WeekWeather(WeekWeather like, Scenario scenario)
    {
        Air = like.Air.Worse(scenario.WarmerC, scenario.Headwind);
        (Forecasts, Problems, _forecasts, _reports, _bulletins, _warmerC) =
            (like.Forecasts, like.Problems, like._forecasts, like._reports, like._bulletins, scenario.WarmerC);
    }

    /// <summary>The same weather made worse.</summary>
    /// <param name="scenario">What is added.</param>
    public WeekWeather Under(Scenario scenario) => new(this, scenario);

    /// <summary>Winds and temperatures in space and time.</summary>
    public AirField Air { get; }

    /// <summary>Forecasts in book order.</summary>
    public ImmutableArray<TafReport> Forecasts { get; }

    /// <summary>What could not be read of the bulletins, at its cell.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>The bulletin that a forecast was read from; null for a forecast that is not one of <see cref="Forecasts"/>.</summary>
    /// <param name="forecast">The forecast.</param>
    public RawBulletin? BulletinOf(TafReport forecast) => _bulletins.GetValueOrDefault(forecast);

    /// <summary>Whether the bulletins of two weeks that have the same ones would be read as of the same days.</summary>
    /// <param name="one">A week.</param>
    /// <param name="other">Another.</param>
    internal static bool HasDaysOf(OperatorWeek one, OperatorWeek other) =>
        FirstLeg(one) == FirstLeg(other) || one.Bulletins.All(bulletin => bulletin.Received is not null);

    private static Instant? FirstLeg(OperatorWeek week) => week.Legs.IsEmpty ? null : week.Legs.Min(leg => leg.OffBlocks);

    /// <summary>Decodes the bulletins of a week.</summary>
    /// <param name="week">The books.</param>
    public static WeekWeather Of(OperatorWeek week)
    {
        var winds = week.Winds.ToBuilder();
        var forecasts = ImmutableArray.CreateBuilder<TafReport>();
        var reports = ImmutableArray.CreateBuilder<MetarReport>();
        var bulletins = new Dictionary<TafReport, RawBulletin>(ReferenceEqualityComparer.Instance);
        var problems = ImmutableArray.CreateBuilder<Problem>();
        var firstLeg = FirstLeg(week);
        foreach (var bulletin in week.Bulletins)
        {
            var cell = bulletin.Origin.Cell(nameof(RawBulletin.Text));
            if ((bulletin.Received ?? firstLeg) is not { } received) continue;
            if (bulletin.Received is null)
                problems.Add(Note(bulletin.Origin.Cell(nameof(RawBulletin.Received)),
                    "When the bulletin was received is not said: its days are taken as those nearest to the first leg.", ""));
            switch (BulletinSort.KindOf(bulletin.Text))
            {
                case BulletinKind.WindsAloft:
                    var aloft = WindsAloftBulletin.Parse(bulletin.Text, received);
                    winds.AddRange(aloft.ToAirReports(station => PlaceOf(week, station), out var unplaced));
                    problems.AddRange(aloft.Unread.Select(group => Unread(cell, group)));
                    problems.AddRange(unplaced.Select(
                        station => Note(cell, $"The winds-aloft station {station} is neither in Fixes nor in Airports; its winds are left out.", station)));
                    break;
                case BulletinKind.Forecast or BulletinKind.Report:
                    foreach (var text in BulletinText.Each(bulletin.Text)) ReadOne(text, bulletin, received);
                    break;
            }
        }

        return new WeekWeather(new AirField(winds), forecasts.DrainToImmutable(), reports.DrainToImmutable(), bulletins, problems.DrainToImmutable());

        void ReadOne(string text, RawBulletin bulletin, Instant received)
        {
            var cell = bulletin.Origin.Cell(nameof(RawBulletin.Text));
            if (BulletinSort.KindOf(text) == BulletinKind.Forecast)
            {
                var forecast = TafReport.Parse(text, received);
                forecasts.Add(forecast);
                bulletins.Add(forecast, bulletin);
                problems.AddRange(forecast.Unread.Select(group => Unread(cell, group)));
            }
            else
            {
                var report = MetarReport.Parse(text, received);
                reports.Add(report);
                problems.AddRange(report.Unread.Select(group => Unread(cell, group)));
            }
        }
    }

    /// <summary>
    /// The forecast that holds at an airport at an instant: of those valid then the one issued last, of two of one time the later in the book; null where none
    /// is, or where the last one cancels it.
    /// </summary>
    /// <param name="airport">Ident.</param>
    /// <param name="at">The instant.</param>
    public TafReport? ForecastAt(string airport, Instant at) =>
        _forecasts[airport].Where(forecast => forecast.Covers(at)).OrderBy(forecast => forecast.Issued
            ?? forecast.ValidFrom).LastOrDefault() is { IsCancelled: false, Groups.IsEmpty: false } last ? last : null;

    /// <summary>The last report of an airport that is not older than 90 minutes at an instant; null where there is none.</summary>
    /// <param name="airport">Ident.</param>
    /// <param name="at">The instant.</param>
    public MetarReport? ReportAt(string airport, Instant at) =>
        _reports[airport].Where(report => !report.IsMissing && report.Observed <= at && at - report.Observed <= ReportHolds).OrderBy(report => report.Observed)
            .LastOrDefault();

    /// <summary>
    /// The weather for a takeoff or landing: wind by report, else by forecast (a variable one as calm: no headwind to count on), else from the winds aloft at
    /// the field; temperature by report, else from aloft.
    /// </summary>
    /// <param name="airport">The airport.</param>
    /// <param name="at">The instant.</param>
    public SurfaceWeather SurfaceAt(Airport airport, Instant at)
    {
        var air = Air.At(airport.Position, airport.Elevation, at);
        var sources = ImmutableArray.CreateBuilder<string>();
        var report = ReportAt(airport.Ident, at);
        var forecast = ForecastAt(airport.Ident, at)?.At(at);
        var now = report?.Conditions ?? forecast?.Prevailing;
        var word = report is not null ? "report" : "forecast";

        var isAloft = !air.WindAssumed && Air.LowestWindFt(airport.Position, at) > airport.Elevation.Value + SurfaceFt;

        // What a report leaves out, the forecast may give.
        if ((now?.Wind ?? forecast?.Prevailing.Wind) is { } wind)
        {
            var windWord = now?.Wind is null ? "forecast" : word;
            if (wind.IsVariable)
            {
                air = air with { WindFrom = new TrueDegrees(0), WindSpeed = Knots.Zero, WindAssumed = false };
                isAloft = false;
                sources.Add($"Wind at {airport.Ident} by {windWord}: variable, computed as calm.");
            }
            else if (Steady(wind) is { } steady)
            {
                air = air with { WindFrom = steady.From, WindSpeed = steady.Speed, WindAssumed = false };
                isAloft = false;
                sources.Add($"Wind at {airport.Ident} by {windWord}.");
            }
        }

        if (report?.Temperature is { } temperature)
        {
            air = air with { Temperature = new Celsius(temperature.Value + _warmerC), TemperatureAssumed = false };
            sources.Add($"Temperature at {airport.Ident} by report.");
        }

        var isWet = (now?.Weather.Any(Wets) ?? false) || (forecast?.Temporary.Any(group => group.Conditions.Weather.Any(Wets)) ?? false);
        if (isWet) sources.Add($"Precipitation at {airport.Ident} by {word}: runway taken as wet.");
        var setting = now?.AltimeterSetting ?? forecast?.Prevailing.AltimeterSetting;
        if (setting is not null) sources.Add($"Altimeter setting at {airport.Ident} by {(now?.AltimeterSetting is null ? "forecast" : word)}.");
        return new SurfaceWeather(air, isAloft, setting, isWet, sources.DrainToImmutable());
    }

    /// <summary>The wind to compute with: gusts are left to the pilot.</summary>
    private static (TrueDegrees From, Knots Speed)? Steady(SurfaceWind wind) =>
        wind.IsCalm ? (new TrueDegrees(0), Knots.Zero)
        : wind.DirectionDeg is { } direction ? (TrueDegrees.Of(direction), wind.Speed)
        : null;

    private static bool Wets(string weather) =>
        Precipitation.Any(code => weather.Contains(code, StringComparison.Ordinal)) && !weather.StartsWith("VC", StringComparison.Ordinal);

    private static GeoPoint? PlaceOf(OperatorWeek week, string station) =>
        week.Fixes.FirstOrDefault(fix => string.Equals(fix.Ident, station, StringComparison.OrdinalIgnoreCase))?.Position
        ?? week.Airports.GetValueOrDefault(station)?.Position
        ?? week.Airports.GetValueOrDefault("X" + station)?.Position;

    private static Problem Unread(string cell, UnreadGroup group) =>
        Note(cell, $"{group.Group} in the bulletin is left out, the rest is used: {group.Why}", group.Group);

    private static Problem Note(string cell, string text, string read) => new() { State = State.Caution, Cell = cell, Text = text, Read = read };
}
