namespace Batch.SampleMaker.House;

/// <summary>One invented pilot.</summary>
public sealed record OnePilot(string Code, string Name, int WeightLb, string Types, string Seats)
{
    public required LocalDate MedicalUntil { get; init; }

    public required LocalDate CompetencyUntil { get; init; }

    public required LocalDate InstrumentUntil { get; init; }

    public required LocalDate LineCheckUntil { get; init; }

    public required int Hours { get; init; }

    public required int HoursInType { get; init; }

    public string Certificate { get; init; } = "commercial";

    public int NightHours { get; init; }

    public required LocalDate ThirdLastLanding { get; init; }

    public required LocalDate ThirdLastNightLanding { get; init; }
}
