namespace Batch.Books.Sheets;

/// <summary>Turns numbers of minutes and hours into durations, to the second.</summary>
internal static class Spans
{
    /// <summary>The duration of so many minutes.</summary>
    public static Duration OfMinutes(double minutes) => Duration.FromSeconds(Math.Round(minutes * 60));

    /// <summary>The duration of so many hours.</summary>
    public static Duration OfHours(double hours) => Duration.FromSeconds(Math.Round(hours * 3600));
}
