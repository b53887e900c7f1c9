namespace Batch.Sheets.Pictures;

/// <summary>Every word that pictures write; a template can put others in their place.</summary>
internal static class PictureWords
{
    public static ImmutableArray<string> All { get; } =
    [
        "Duty", "limit", "local", "over the limit", "release", "report", "rest", "UTC",
    ];
}
