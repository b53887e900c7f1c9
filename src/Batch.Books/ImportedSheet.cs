namespace Batch.Books;

/// <summary>What an import brought into one sheet.</summary>
/// <param name="Name">Name of the sheet.</param>
/// <param name="Added">Names of the rows added.</param>
/// <param name="Same">How many rows stand there already and say the same.</param>
/// <param name="Differences">Cells that say something else than the list, one sentence each.</param>
/// <param name="Updated">How many cells were set to what the list says.</param>
public sealed record ImportedSheet(string Name, ImmutableArray<string> Added, int Same, ImmutableArray<string> Differences, int Updated);
