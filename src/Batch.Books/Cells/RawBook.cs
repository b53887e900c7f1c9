namespace Batch.Books.Cells;

/// <summary>One book as it came from the disk.</summary>
/// <param name="Name">File or folder name.</param>
/// <param name="Sha256">Hash of its bytes, lower-case hexadecimal.</param>
/// <param name="Sheets">Its sheets, in book order.</param>
internal sealed record RawBook(string Name, string Sha256, ImmutableArray<RawSheet> Sheets);
