namespace Batch.Books;

/// <summary>A checked workbook.</summary>
/// <param name="Name">File name, such as <c>checked.xlsx</c>.</param>
/// <param name="Content">The workbook.</param>
public sealed record CheckedBookFile(string Name, ImmutableArray<byte> Content);
