namespace Batch.Books;

/// <summary>A book for a user to begin with.</summary>
/// <param name="Name">File name, such as <c>week.xlsx</c>.</param>
/// <param name="Content">The workbook.</param>
public sealed record StarterFile(string Name, ImmutableArray<byte> Content);
