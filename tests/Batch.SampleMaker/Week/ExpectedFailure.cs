namespace Batch.SampleMaker.Week;

/// <summary>A leg that must fail, by which check, and why.</summary>
public sealed record ExpectedFailure(string Trip, int Leg, string Check, string Why);
