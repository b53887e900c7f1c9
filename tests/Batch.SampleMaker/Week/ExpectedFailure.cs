namespace Batch.SampleMaker.Week;

/// <summary>A leg that must fail.</summary>
/// <param name="Trip">Trip.</param>
/// <param name="Leg">Number of the leg.</param>
/// <param name="Check">The check meant to find it, or <c>unplanned</c> for a row that cannot be read.</param>
/// <param name="Why">Why; without commas.</param>
/// <param name="Also">Checks that fail with it, because it cannot be otherwise; with blanks between them.</param>
public sealed record ExpectedFailure(string Trip, int Leg, string Check, string Why, string Also = "");
