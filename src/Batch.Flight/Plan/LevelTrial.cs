namespace Batch.Flight.Plan;

/// <summary>A level that was tried.</summary>
/// <param name="Level">Level [ft].</param>
/// <param name="Result">What came of it.</param>
public sealed record LevelTrial(Feet Level, ProfileResult Result);
