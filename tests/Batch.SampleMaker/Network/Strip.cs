namespace Batch.SampleMaker.Network;

/// <summary>A runway, both directions of it.</summary>
/// <param name="Number">Number of the first direction, 1 to 18.</param>
/// <param name="BearingDeg">True bearing of the first direction [deg].</param>
/// <param name="LengthFt">Length [ft].</param>
/// <param name="Surface">paved, grass or gravel.</param>
/// <param name="Lighted">Whether it is lighted.</param>
/// <param name="SlopePercent">Slope in the first direction [%], positive uphill.</param>
/// <param name="ClearwayFt">Clearway beyond each end [ft].</param>
/// <param name="DisplacedFt">How far the first direction's threshold is displaced [ft].</param>
public sealed record Strip(
    int Number, double BearingDeg, int LengthFt, string Surface, bool Lighted, double SlopePercent = 0, int ClearwayFt = 0, int DisplacedFt = 0);
