namespace Batch.Flight.Plan;

/// <summary>One correction of a runway distance.</summary>
/// <param name="Name">What for, such as <c>grass</c> or <c>8 kt headwind, half credited</c>.</param>
/// <param name="Factor">Factor on the distance, above zero.</param>
public sealed record RunwayFactor(string Name, double Factor);
