namespace Batch.Flight.Air.Bulletins;

/// <summary>One group of a forecast.</summary>
public sealed record TafGroup
{
    /// <summary>What it does.</summary>
    public required TafGroupKind Kind { get; init; }

    /// <summary>Its probability, 30 or 40 percent; null where none is given.</summary>
    public int? ProbabilityPercent { get; init; }

    /// <summary>Its start; null where it could not be read.</summary>
    public Instant? From { get; init; }

    /// <summary>Its end; null with FM, and where it could not be read.</summary>
    public Instant? To { get; init; }

    /// <summary>The conditions it gives; what it does not give is empty.</summary>
    public required WeatherConditions Conditions { get; init; }

    /// <summary>Wind shear it gives.</summary>
    public LowLevelWindShear? WindShear { get; init; }

    /// <summary>The altimeter setting it gives in inches of mercury [inHg].</summary>
    public double? AltimeterInches { get; init; }

    /// <summary>Groups not decoded here: icing, turbulence, and the unread ones.</summary>
    public ImmutableArray<string> OtherGroups { get; init; } = [];

    /// <summary>The words that name it, such as PROB30 TEMPO.</summary>
    public string Words
    {
        get
        {
            var word = Kind switch
            {
                TafGroupKind.Base => "BASE",
                TafGroupKind.From => "FM",
                TafGroupKind.Becoming => "BECMG",
                TafGroupKind.Temporary => "TEMPO",
                TafGroupKind.Intermittent => "INTER",
                TafGroupKind.Probable => "",
            };
            return ProbabilityPercent is { } percent ? FormattableString.Invariant($"PROB{percent} {word}").Trim() : word;
        }
    }
}
