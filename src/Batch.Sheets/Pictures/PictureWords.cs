namespace Batch.Sheets.Pictures;

/// <summary>Every word that pictures write; a template can put others in their place.</summary>
internal static class PictureWords
{
    /// <summary>The words, in English, in order.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "0 °C or colder all the way", "Aboard", "above 0 °C all the way", "additional", "alternate", "as the fuel burns, takeoff to zero fuel", "contingency",
        "Duty", "freezing level not known",
        "Fuel", "in aft of datum", "inside", "Landing", "landing", "limit", "local", "Most", "names left out", "NM from the departure", "outside",
        "over the limit", "release", "report",
        "Required", "reserve", "rest", "Route from above", "Takeoff", "takeoff", "taxi", "top of climb", "top of descent", "trip", "true north", "UTC",
        "Vertical profile",
        "Weight and centre of gravity", "Zero fuel", "zero-fuel limits",
    ];
}
