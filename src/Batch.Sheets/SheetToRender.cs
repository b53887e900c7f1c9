namespace Batch.Sheets;

/// <summary>One sheet of a week.</summary>
/// <param name="Template">Name of its template.</param>
/// <param name="Model">Its values.</param>
/// <param name="IsPrinted">Whether it goes to paper; a mail does not.</param>
public sealed record SheetToRender(string Template, SheetModel Model, bool IsPrinted);
