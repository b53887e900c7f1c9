using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What one pilot does in the week.</summary>
internal sealed record CrewWeekView
{
    [Value("Code of the pilot")]
    public required string Code { get; init; }

    [Value("Number of legs")]
    public required int Legs { get; init; }

    [Value("Number of duties")]
    public required int Duties { get; init; }

    [Value("Flight time, block to block")]
    public required Elapsed FlightTime { get; init; }

    [Value("Longest duty; nothing without one")]
    public required Elapsed? LongestDuty { get; init; }

    [Value("Shortest rest between two duties; nothing where none is known")]
    public required Elapsed? ShortestRest { get; init; }

    public static CrewWeekView Of(CrewWeek person) => new()
    {
        Code = person.Code,
        Legs = person.Steps.Length,
        Duties = person.Duties.Length,
        FlightTime = new Elapsed(person.FlightTime),
        LongestDuty = person.Duties.IsEmpty ? null : new Elapsed(person.Duties.Max(duty => duty.Length)),
        ShortestRest = Elapsed.Of(person.Duties.Min(duty => duty.RestBefore)),
    };
}
