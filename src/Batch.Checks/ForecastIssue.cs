namespace Batch.Checks;

/// <summary>When and by whom a forecast was issued.</summary>
/// <param name="Issued">When; null where it does not say.</param>
/// <param name="Source">Who issued it or passed it on, as the book says; empty where it does not.</param>
/// <param name="Cell">Cell of the source.</param>
public sealed record ForecastIssue(Instant? Issued, string Source, string Cell);
