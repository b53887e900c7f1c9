namespace Batch.Flight.Route;

/// <summary>One fix of an airway and what holds from it to the next fix in sequence.</summary>
/// <param name="Fix">Ident of the fix.</param>
/// <param name="MinimumAltitude">Minimum altitude from this fix to the next [ft]; null where not said.</param>
/// <param name="Direction">Direction allowed from this fix to the next.</param>
/// <param name="Origin">Where it was read.</param>
public sealed record AirwayPoint(string Fix, Feet? MinimumAltitude, AirwayDirection Direction, Origin Origin);
