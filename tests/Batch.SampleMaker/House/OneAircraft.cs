namespace Batch.SampleMaker.House;

/// <summary>One aircraft.</summary>
/// <param name="Registration">Registration.</param>
/// <param name="Type">Type.</param>
/// <param name="EmptyLb">Basic empty weight [lb].</param>
/// <param name="ArmIn">Arm of it [in].</param>
/// <param name="PilotsIncluded">Pilots counted in it.</param>
/// <param name="BurnBiasPercent">Burn beyond the tables [%].</param>
public sealed record OneAircraft(string Registration, string Type, int EmptyLb, double ArmIn, int PilotsIncluded, double BurnBiasPercent)
{
    public required double Hours { get; init; }

    public required int Landings { get; init; }

    public required double NextInspectionAt { get; init; }

    public required string Kit { get; init; }

    public bool IsForNight { get; init; } = true;

    public required string Remark { get; init; }
}
