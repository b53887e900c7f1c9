namespace Batch.Checks.Enroute;

/// <summary>A point of the profile seen from the shore.</summary>
/// <param name="AlongNm">Distance along the route [NM].</param>
/// <param name="AltitudeFt">Altitude [ft].</param>
/// <param name="ShoreNm">Distance to the nearest land [NM]; 0 over land.</param>
internal readonly record struct WaterPoint(double AlongNm, double AltitudeFt, double ShoreNm);
