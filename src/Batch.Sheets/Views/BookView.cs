using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A book that was read.</summary>
internal sealed record BookView
{
    [Value("Name of the book")]
    public required string Name { get; init; }

    [Value("First twelve digits of the hash of its bytes, to tell one version from another")]
    public required string Fingerprint { get; init; }
}
