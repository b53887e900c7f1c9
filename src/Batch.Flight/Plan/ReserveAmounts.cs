using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>The amounts of the fuel ladder that follow from times and fractions.</summary>
/// <param name="Contingency">Contingency [lb].</param>
/// <param name="InsteadOfAlternate">Holding where no alternate is filed [lb].</param>
/// <param name="FinalReserve">Final reserve [lb].</param>
/// <param name="FinalReserveTime">Its time.</param>
/// <param name="FinalReserveFlow">Its flow [lb/h].</param>
/// <param name="Assumptions">Assumptions made.</param>
/// <param name="TableEdges">Readings that left their table and were taken at its edge.</param>
internal sealed record ReserveAmounts(
    Pounds Contingency,
    Pounds InsteadOfAlternate,
    Pounds FinalReserve,
    Duration FinalReserveTime,
    PoundsPerHour FinalReserveFlow,
    ImmutableArray<string> Assumptions,
    ImmutableArray<(PerformanceTable Table, TableReading Reading)> TableEdges);
