namespace Batch.SampleMaker.Week;

/// <summary>One row of the Cargo sheet.</summary>
public sealed record Freight(string Legs, string What, int WeightLb, string Station = "", string Notes = "");
