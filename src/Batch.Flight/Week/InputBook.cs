namespace Batch.Flight.Week;

/// <summary>A book that was read.</summary>
/// <param name="Name">File or folder name without its folder.</param>
/// <param name="Sha256">Hash of its bytes, lower-case hexadecimal; of a folder, of its files' names and bytes in name order.</param>
public sealed record InputBook(string Name, string Sha256);
