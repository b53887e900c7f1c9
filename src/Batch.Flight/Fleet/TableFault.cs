namespace Batch.Flight.Fleet;

/// <summary>Why a performance table could not be made: one fault of one row.</summary>
/// <param name="Text">One sentence saying what is wrong.</param>
/// <param name="Origin">Where the row was read.</param>
public sealed record TableFault(string Text, Origin Origin);
