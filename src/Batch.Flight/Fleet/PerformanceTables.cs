namespace Batch.Flight.Fleet;

/// <summary>The performance tables of one type; null or empty where the book gives none.</summary>
public sealed record PerformanceTables
{
    /// <summary>
    /// Climb from sea level, cumulative. Axes: weight at takeoff [lb], ISA deviation [K], pressure altitude [ft]. Values: time [min], fuel [lb], still-air
    /// distance [NM].
    /// </summary>
    public PerformanceTable? Climb { get; init; }

    /// <summary>Cruise by setting. Axes: weight [lb], ISA deviation [K], pressure altitude [ft]. Values: true airspeed [kt], fuel flow [lb/h].</summary>
    public ImmutableSortedDictionary<string, PerformanceTable> Cruise { get; init; } =
        ImmutableSortedDictionary<string, PerformanceTable>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>The cruise settings in the order in which the book first names them; the first is the operator's usual one.</summary>
    public ImmutableArray<string> CruiseSettings { get; init; } = [];

    /// <summary>Descent to sea level, cumulative. Axis: pressure altitude [ft]. Values: time [min], fuel [lb], still-air distance [NM].</summary>
    public PerformanceTable? Descent { get; init; }

    /// <summary>Holding. Axes: weight [lb], pressure altitude [ft]. Value: fuel flow [lb/h].</summary>
    public PerformanceTable? Holding { get; init; }

    /// <summary>
    /// Takeoff by flap name. Axes: weight [lb], pressure altitude [ft], temperature [°C]. Values: ground roll [ft], distance over the obstacle [ft] and, where
    /// the book gives it, accelerate-stop distance [ft].
    /// </summary>
    public ImmutableSortedDictionary<string, PerformanceTable> Takeoff { get; init; } =
        ImmutableSortedDictionary<string, PerformanceTable>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// Landing by flap name. Axes: weight [lb], pressure altitude [ft], temperature [°C]. Values: ground roll [ft], distance over the obstacle [ft].
    /// </summary>
    public ImmutableSortedDictionary<string, PerformanceTable> Landing { get; init; } =
        ImmutableSortedDictionary<string, PerformanceTable>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// Named speeds by flap. Axis: weight [lb]. Values: calibrated speeds [kt], named by the table's <see cref="PerformanceTable.ValueNames"/>.
    /// </summary>
    public ImmutableSortedDictionary<string, PerformanceTable> Speeds { get; init; } =
        ImmutableSortedDictionary<string, PerformanceTable>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);
}
