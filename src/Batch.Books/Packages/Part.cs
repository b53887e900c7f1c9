namespace Batch.Books.Packages;

/// <summary>One part of a workbook package: a file of its zip archive.</summary>
/// <param name="Name">Path in the archive, without a leading slash.</param>
/// <param name="Content">Its bytes, unpacked.</param>
/// <param name="Written">The time the archive says it was written.</param>
internal sealed record Part(string Name, byte[] Content, DateTimeOffset Written);
