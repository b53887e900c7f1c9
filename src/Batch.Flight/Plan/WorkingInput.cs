namespace Batch.Flight.Plan;

/// <summary>A number that goes into a step of the working.</summary>
/// <param name="Name">Name as the formula calls it.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit; empty for a plain number.</param>
/// <param name="Cell">Cell it was read from; empty where it was computed.</param>
public sealed record WorkingInput(string Name, double Value, string Unit, string Cell = "");
