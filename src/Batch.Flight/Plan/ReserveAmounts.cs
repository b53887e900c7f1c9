namespace Batch.Flight.Plan;

/// <summary>The amounts of the fuel ladder that follow from times and fractions.</summary>
/// <param name="Contingency">Contingency [lb].</param>
/// <param name="InsteadOfAlternate">Holding where no alternate is filed [lb].</param>
/// <param name="FinalReserve">Final reserve [lb].</param>
/// <param name="FinalReserveTime">Its time.</param>
/// <param name="FinalReserveFlow">Its flow [lb/h].</param>
/// <param name="Assumptions">Assumptions made.</param>
/// <param name="TableEdges">Values taken at a table's edge, as sentences.</param>
internal sealed record ReserveAmounts(
    Pounds Contingency,
    Pounds InsteadOfAlternate,
    Pounds FinalReserve,
    Duration FinalReserveTime,
    PoundsPerHour FinalReserveFlow,
    ImmutableArray<string> Assumptions,
    ImmutableArray<string> TableEdges);
