namespace Batch.Checks;

/// <summary>A change that makes a failed check pass, found by planning it.</summary>
/// <param name="Text">In the dispatcher's words, with the cells to change.</param>
/// <param name="Disruption">How much it disturbs, 1 least.</param>
/// <param name="Changes">New cell values by cell, such as <c>week.xlsx/Legs/F7</c> to <c>FL140</c>.</param>
public sealed record Remedy(string Text, int Disruption, ImmutableSortedDictionary<string, string> Changes);
