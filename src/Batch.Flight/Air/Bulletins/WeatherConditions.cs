namespace Batch.Flight.Air.Bulletins;

/// <summary>Wind, visibility, weather and cloud: what reports and forecasts have in common. What is null or empty was not given.</summary>
public sealed record WeatherConditions
{
    /// <summary>Wind at the ground.</summary>
    public SurfaceWind? Wind { get; init; }

    /// <summary>Ceiling and visibility are good (CAVOK): 10 km or more, no cloud of significance, no weather.</summary>
    public bool IsCavok { get; init; }

    /// <summary>Prevailing visibility.</summary>
    public Visibility? Visibility { get; init; }

    /// <summary>Present or forecast weather, in code words such as -SHRA; NSW (no significant weather) stands alone.</summary>
    public ImmutableArray<string> Weather { get; init; } = [];

    /// <summary>Layers of cloud, or one word such as NSC.</summary>
    public ImmutableArray<CloudLayer> Clouds { get; init; } = [];

    /// <summary>Altimeter setting (QNH), in a forecast the lowest.</summary>
    public Hectopascals? AltimeterSetting { get; init; }

    /// <summary>The lowest broken, overcast or hidden sky above the aerodrome [ft]; null where there is none, or where its height is not given.</summary>
    public Feet? Ceiling => Clouds.Where(c => c.IsCeiling && c.Height is not null).Select(c => c.Height).Min();

    /// <summary>A ceiling was reported without its height.</summary>
    public bool HasCeilingOfUnknownHeight => Clouds.Any(c => c.IsCeiling && c.Height is null);

    /// <summary>The category by what is known of ceiling and visibility; null where neither is.</summary>
    public FlightCategory? Category
    {
        get
        {
            if (IsCavok) return FlightCategory.Visual;
            FlightCategory? byVisibility = Visibility switch
            {
                null => null,
                { StatuteMiles: < 1 } or { StatuteMiles: <= 1, Limit: VisibilityLimit.LessThan } => FlightCategory.LowInstrument,
                { StatuteMiles: < 3 } or { StatuteMiles: <= 3, Limit: VisibilityLimit.LessThan } => FlightCategory.Instrument,
                { StatuteMiles: <= 5, Limit: VisibilityLimit.Exact or VisibilityLimit.LessThan } => FlightCategory.MarginalVisual,
                _ => FlightCategory.Visual,
            };
            FlightCategory? byCeiling = Ceiling?.Value switch
            {
                null => Clouds.IsEmpty || HasCeilingOfUnknownHeight || Clouds.Any(c => c.Amount == CloudAmount.Unknown) ? null : FlightCategory.Visual,
                < 500 => FlightCategory.LowInstrument,
                < 1000 => FlightCategory.Instrument,
                <= 3000 => FlightCategory.MarginalVisual,
                _ => FlightCategory.Visual,
            };
            return byVisibility is null || byCeiling is null ? byVisibility ?? byCeiling : (FlightCategory)Math.Min((int)byVisibility, (int)byCeiling);
        }
    }

    /// <summary>
    /// These conditions with every element that a change gives in its place (WMO-No. 306, FM 51, 51.8.3): a gradual change leaves the rest standing.
    /// </summary>
    /// <param name="change">The change.</param>
    public WeatherConditions ChangedBy(WeatherConditions change)
    {
        if (change.IsCavok) return change with { Wind = change.Wind ?? Wind, AltimeterSetting = change.AltimeterSetting ?? AltimeterSetting };
        var isStillCavok = IsCavok && change.Visibility is null && change.Weather.IsEmpty && change.Clouds.IsEmpty;
        var weather = change.Weather.IsEmpty ? Weather : change.Weather is ["NSW"] ? [] : change.Weather;
        return new WeatherConditions
        {
            Wind = change.Wind ?? Wind,
            IsCavok = isStillCavok,
            Visibility = change.Visibility ?? Visibility,
            Weather = weather,
            Clouds = change.Clouds.IsEmpty ? Clouds : change.Clouds,
            AltimeterSetting = change.AltimeterSetting ?? AltimeterSetting,
        };
    }
}
