namespace Batch.Checks;

/// <summary>What is forecast at an airport for a time.</summary>
public sealed record ForecastPeriod
{
    /// <summary>Start.</summary>
    public required Instant From { get; init; }

    /// <summary>End.</summary>
    public required Instant To { get; init; }

    /// <summary>Ceiling above the airport [ft], the lowest broken or overcast layer or vertical visibility; null where there is none.</summary>
    public required Feet? Ceiling { get; init; }

    /// <summary>Visibility [m]; the greatest that a forecast reports means that or more.</summary>
    public required double VisibilityMetres { get; init; }
}
