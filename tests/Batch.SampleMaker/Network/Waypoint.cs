using Batch.SampleMaker.Land;

namespace Batch.SampleMaker.Network;

/// <summary>An invented fix.</summary>
/// <param name="Ident">Ident.</param>
/// <param name="Spot">Place.</param>
/// <param name="Kind">VOR, NDB or waypoint.</param>
/// <param name="Name">Name of a navigation aid.</param>
/// <param name="Frequency">Frequency of a navigation aid.</param>
public sealed record Waypoint(string Ident, Spot Spot, string Kind = "waypoint", string Name = "", string Frequency = "");
