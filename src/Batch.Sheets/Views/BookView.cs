using Batch.Flight.Week;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A book that was read.</summary>
internal sealed record BookView
{
    private const int FingerprintLength = 12;

    [Value("Name of the book")]
    public required string Name { get; init; }

    [Value("First twelve digits of the hash of its bytes, to tell one version from another")]
    public required string Fingerprint { get; init; }

    public static BookView Of(InputBook book) =>
        new() { Name = book.Name, Fingerprint = book.Sha256.Length > FingerprintLength ? book.Sha256[..FingerprintLength] : book.Sha256 };
}
