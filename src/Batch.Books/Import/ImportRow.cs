namespace Batch.Books.Import;

/// <summary>One row from a list, ready to be compared with a sheet.</summary>
/// <param name="Label">Its name in messages.</param>
/// <param name="Values">Its values; those of the key columns among them.</param>
internal sealed record ImportRow(string Label, ImmutableArray<ImportValue> Values);
