namespace Batch.Sheets.Register;

/// <summary>A column of a sheet of the register.</summary>
/// <param name="Header">Header.</param>
/// <param name="Width">Width [characters].</param>
internal sealed record BookColumn(string Header, double Width);
