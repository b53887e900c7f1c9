using Batch.Flight.Earth;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The sun's events of one local day at one place.</summary>
internal sealed record SunView
{
    [Value("Start of morning civil twilight; nothing where there is none that day")]
    public required ClockTime? CivilDawn { get; init; }

    [Value("Sunrise; nothing where there is none that day")]
    public required ClockTime? Sunrise { get; init; }

    [Value("Sunset; nothing where there is none that day")]
    public required ClockTime? Sunset { get; init; }

    [Value("End of evening civil twilight; nothing where there is none that day")]
    public required ClockTime? CivilDusk { get; init; }

    [Value("In words where the sun does not rise or set: sun up all day, sun down all day")]
    public required string AllDay { get; init; }

    public static SunView Of(SunDay day, DateTimeZone zone)
    {
        ClockTime? At(Instant? instant) => instant is { } known ? new ClockTime(known, zone) : null;
        return new SunView
        {
            CivilDawn = At(day.CivilDawn),
            Sunrise = At(day.Sunrise),
            Sunset = At(day.Sunset),
            CivilDusk = At(day.CivilDusk),
            AllDay = day.DayState switch
            {
                SunState.Normal => "",
                SunState.PolarDay => "sun up all day",
                SunState.PolarNight => "sun down all day",
            },
        };
    }
}
