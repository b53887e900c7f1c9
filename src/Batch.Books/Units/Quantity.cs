namespace Batch.Books.Units;

/// <summary>What the numbers of a column are: the unit they are kept in and the units they may be written in.</summary>
/// <param name="Name">The word for messages, such as <c>weight</c>.</param>
/// <param name="Unit">The unit kept, which also holds where neither header nor book names one.</param>
/// <param name="Dimensions">What the units written may measure; the first is that of <paramref name="Unit"/>.</param>
/// <param name="Role">The default of the book that holds for it.</param>
internal sealed record Quantity(string Name, string Unit, ImmutableArray<Dimension> Dimensions, UnitRole Role = UnitRole.None)
{
    /// <summary>A weight [lb].</summary>
    public static readonly Quantity Weight = new("weight", "lb", [Dimension.Mass], UnitRole.Weight);

    /// <summary>Fuel [lb], or [US gal] where written by volume.</summary>
    public static readonly Quantity Fuel = new("fuel", "lb", [Dimension.Mass, Dimension.Volume], UnitRole.Fuel);

    /// <summary>Fuel flow [lb/h], or [US gal/h] where written by volume.</summary>
    public static readonly Quantity FuelFlow = new("fuel flow", "lb/h", [Dimension.MassFlow, Dimension.VolumeFlow], UnitRole.FuelFlow);

    /// <summary>Fuel density [lb/US gal].</summary>
    public static readonly Quantity Density = new("density", "lb/USG", [Dimension.Density]);

    /// <summary>An arm [in].</summary>
    public static readonly Quantity Arm = new("arm", "in", [Dimension.Length]);

    /// <summary>A moment [lb·in].</summary>
    public static readonly Quantity Moment = new("moment", "lb in", [Dimension.Moment]);

    /// <summary>An altitude or elevation [ft].</summary>
    public static readonly Quantity Altitude = new("altitude", "ft", [Dimension.Length, Dimension.FlightLevel], UnitRole.Altitude);

    /// <summary>A runway length [ft].</summary>
    public static readonly Quantity RunwayLength = new("runway length", "ft", [Dimension.Length], UnitRole.Runway);

    /// <summary>A distance [NM].</summary>
    public static readonly Quantity Distance = new("distance", "NM", [Dimension.Length], UnitRole.Distance);

    /// <summary>A speed [kt].</summary>
    public static readonly Quantity Speed = new("speed", "kt", [Dimension.Speed], UnitRole.Speed);

    /// <summary>A temperature [°C].</summary>
    public static readonly Quantity Temperature = new("temperature", "°C", [Dimension.Temperature], UnitRole.Temperature);

    /// <summary>A difference of temperatures [K].</summary>
    public static readonly Quantity TemperatureDifference = new("temperature difference", "°C", [Dimension.TemperatureDifference], UnitRole.Temperature);

    /// <summary>A time [min].</summary>
    public static readonly Quantity Minutes = new("time", "min", [Dimension.Time]);

    /// <summary>A time [h].</summary>
    public static readonly Quantity Hours = new("time", "h", [Dimension.Time]);

    /// <summary>An angle [deg].</summary>
    public static readonly Quantity Angle = new("angle", "deg", [Dimension.Angle]);

    /// <summary>A percentage [%].</summary>
    public static readonly Quantity Percent = new("percentage", "%", [Dimension.Percent]);

    /// <summary>A percentage a knot [%/kt].</summary>
    public static readonly Quantity PercentPerKnot = new("percentage per knot", "%/kt", [Dimension.PercentPerSpeed]);

    /// <summary>A percentage a percent of slope [%/%].</summary>
    public static readonly Quantity PercentPerPercent = new("percentage per percent", "%/%", [Dimension.PercentPerPercent]);

    /// <summary>A fuel price [currency/US gal].</summary>
    public static readonly Quantity PricePerGallon = new("price", "/USG", [Dimension.PricePerVolume]);

    /// <summary>A time of day or instant: whether UTC or local.</summary>
    public static readonly Quantity Clock = new("a time of day", "local", [Dimension.LocalTime, Dimension.UniversalTime]);

    /// <summary>An instant, UTC where nothing else is said.</summary>
    public static readonly Quantity UtcClock = new("a time in UTC", "UTC", [Dimension.UniversalTime]);

    /// <summary>The unit in which values are kept.</summary>
    public UnitWord Kept { get; } = UnitTable.Find(Unit, Dimensions.AsSpan()) ?? throw new InvalidOperationException("no unit " + Unit);

    /// <summary>The unit a word means here; null where it means none.</summary>
    public UnitWord? Find(string word) => UnitTable.Find(word, Dimensions.AsSpan());

    /// <summary>The unit words understood, for messages.</summary>
    public string KnownUnits => string.Join(", ", Dimensions.SelectMany(UnitTable.Known));
}
