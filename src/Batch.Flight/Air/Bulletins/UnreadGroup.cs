namespace Batch.Flight.Air.Bulletins;

/// <summary>A group of a bulletin that could not be read; the rest of the bulletin is used.</summary>
/// <param name="Group">The group as written.</param>
/// <param name="Why">What is wrong with it or what was expected.</param>
public sealed record UnreadGroup(string Group, string Why);
