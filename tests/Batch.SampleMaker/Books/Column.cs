namespace Batch.SampleMaker.Books;

/// <summary>A column of a sheet.</summary>
/// <param name="Header">Header with its unit.</param>
/// <param name="Width">Width in characters.</param>
/// <param name="Format">How its values are shown.</param>
public sealed record Column(string Header, double Width, CellFormat Format = CellFormat.Text);
