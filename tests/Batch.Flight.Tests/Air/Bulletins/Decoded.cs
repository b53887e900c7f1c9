using System.Globalization;
using Batch.Flight.Air.Bulletins;

namespace Batch.Flight.Tests.Air.Bulletins;

/// <summary>Decoded conditions written as the check files write them.</summary>
internal static class Decoded
{
    public static string Direction(SurfaceWind? wind) => wind switch
    {
        null => "",
        { IsVariable: true } => "VRB",
        _ => wind.DirectionDeg?.ToString("000", CultureInfo.InvariantCulture) ?? "",
    };

    public static string Number(double? value) => value?.ToString("0.##", CultureInfo.InvariantCulture) ?? "";

    public static string Metres(Visibility? visibility) => visibility is null ? "" : Number(Math.Round(visibility.Metres, MidpointRounding.AwayFromZero));

    public static string Limit(Visibility? visibility) => visibility?.Limit switch
    {
        VisibilityLimit.AtLeast => "ge",
        VisibilityLimit.MoreThan => "gt",
        VisibilityLimit.LessThan => "lt",
        _ => "",
    };

    public static string Sky(WeatherConditions conditions) => string.Join(';', conditions.Clouds.Select(Layer));

    public static string Category(WeatherConditions conditions) => conditions.Category switch
    {
        null => "",
        FlightCategory.LowInstrument => "LIFR",
        FlightCategory.Instrument => "IFR",
        FlightCategory.MarginalVisual => "MVFR",
        _ => "VFR",
    };

    public static string Range(RunwayVisualRange range)
    {
        var to = range.UpTo is { } upTo ? "-" + Mark(range.UpToLimit) + Number(upTo) : "";
        var tendency = range.Tendency.Length > 0 ? ":" + range.Tendency : "";
        return $"{range.Runway}:{Mark(range.Limit)}{Number(range.Value)}{to}{(range.IsInFeet ? "ft" : "m")}{tendency}";
    }

    public static string Flag(bool value) => value ? "1" : "";

    private static string Mark(VisibilityLimit limit) => limit switch
    {
        VisibilityLimit.LessThan => "<",
        VisibilityLimit.MoreThan => ">",
        _ => "",
    };

    private static string Layer(CloudLayer layer)
    {
        if (layer.Amount is CloudAmount.SkyClear or CloudAmount.Clear or CloudAmount.NoneSignificant or CloudAmount.NoneDetected) return layer.Word;
        return $"{layer.Word}:{Number(layer.Height?.Value)}" + (layer.Kind.Length > 0 ? ":" + layer.Kind : "");
    }
}
