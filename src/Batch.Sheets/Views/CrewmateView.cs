using Batch.Checks;
using Batch.Flight.Week;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>Someone who flies with the person of a packet. Private.</summary>
internal sealed record CrewmateView
{
    [Value("Code")]
    public required string Code { get; init; }

    [Value("Name; nothing where the code is not in the Crew sheet")]
    public required string Name { get; init; }

    [Value("Mail address as in the Crew sheet")]
    public required string Mail { get; init; }

    [Value("The legs flown together, such as T101/1")]
    public required ImmutableArray<string> Legs { get; init; }

    public static ImmutableArray<CrewmateView> Of(IEnumerable<CheckedLeg> own, string code, OperatorWeek week) =>
    [
        .. own.SelectMany(leg => LegPeople.Crew(leg.Plan).Where(seat => !Seats.Same(seat, code)).Select(seat => (Seat: seat, Key: LegWay.Key(leg.Plan))))
            .GroupBy(pair => pair.Seat, StringComparer.OrdinalIgnoreCase)
            .OrderBy(group => group.Key, StringComparer.OrdinalIgnoreCase)
            .Select(group => new CrewmateView
            {
                Code = group.Key,
                Name = week.Crew.GetValueOrDefault(group.Key)?.Name ?? "",
                Mail = week.Crew.GetValueOrDefault(group.Key)?.Mail ?? "",
                Legs = [.. group.Select(pair => pair.Key)],
            }),
    ];
}
