namespace Batch.Flight.Route;

/// <summary>Why an element of a route could not be understood.</summary>
/// <param name="Element">The element as written.</param>
/// <param name="Position">Its place in the text, 1 for the first.</param>
/// <param name="Why">One sentence.</param>
/// <param name="Near">Near spellings.</param>
internal sealed record RouteFault(string Element, int Position, string Why, ImmutableArray<string> Near);
