namespace Batch.Books.Units;

/// <summary>What a unit measures.</summary>
internal enum Dimension
{
    /// <summary>Mass, called weight in the trade.</summary>
    Mass,

    /// <summary>Volume of fuel.</summary>
    Volume,

    /// <summary>Length.</summary>
    Length,

    /// <summary>Flight level: hundreds of feet; understood in altitudes only.</summary>
    FlightLevel,

    /// <summary>Speed.</summary>
    Speed,

    /// <summary>Temperature.</summary>
    Temperature,

    /// <summary>Difference of temperatures.</summary>
    TemperatureDifference,

    /// <summary>Time.</summary>
    Time,

    /// <summary>Pressure.</summary>
    Pressure,

    /// <summary>Angle.</summary>
    Angle,

    /// <summary>Percentage.</summary>
    Percent,

    /// <summary>Percent a knot.</summary>
    PercentPerSpeed,

    /// <summary>Percent a percent.</summary>
    PercentPerPercent,

    /// <summary>Mass a time.</summary>
    MassFlow,

    /// <summary>Volume a time.</summary>
    VolumeFlow,

    /// <summary>Mass a volume.</summary>
    Density,

    /// <summary>Mass times arm.</summary>
    Moment,

    /// <summary>Money a volume.</summary>
    PricePerVolume,

    /// <summary>Universal time, the zone of a time of day.</summary>
    UniversalTime,

    /// <summary>Local time, the zone of a time of day.</summary>
    LocalTime,
}
