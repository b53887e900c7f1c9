namespace Batch.SampleMaker.Types;

/// <summary>A loading station.</summary>
/// <param name="Name">Name.</param>
/// <param name="Kind">seat, bags or crew.</param>
/// <param name="ArmIn">Arm [in].</param>
/// <param name="Seats">Seats.</param>
/// <param name="MaximumLb">Most weight [lb], or null.</param>
/// <param name="FillOrder">Order of filling.</param>
public sealed record LoadPlace(string Name, string Kind, double ArmIn, int Seats, int? MaximumLb, int FillOrder);
