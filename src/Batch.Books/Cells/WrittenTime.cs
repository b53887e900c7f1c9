namespace Batch.Books.Cells;

/// <summary>A date, a time of day or both, as far as written, with the offset where one is marked.</summary>
/// <param name="Date">Date; null where none is written.</param>
/// <param name="Time">Time of day; null where none is written.</param>
/// <param name="Offset">Offset from UTC; zero for <c>Z</c>, null where none is marked.</param>
internal readonly record struct WrittenTime(LocalDate? Date, LocalTime? Time, Offset? Offset);
