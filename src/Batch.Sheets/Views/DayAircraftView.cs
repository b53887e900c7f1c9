using Batch.Checks;
using Batch.Flight.Week;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One aircraft on one day of the week board.</summary>
internal sealed record DayAircraftView
{
    [Value("Registration as in the book; nothing where it could not be read")]
    public required string Registration { get; init; }

    [Value("Name of its type")]
    public required string Type { get; init; }

    [Value("Its legs that day, in time order")]
    public required ImmutableArray<BoardLegView> Legs { get; init; }

    public static DayAircraftView Of(string registration, IEnumerable<CheckedLeg> legs, OperatorWeek week) => new()
    {
        Registration = registration,
        Type = week.Fleet.GetValueOrDefault(registration)?.Type ?? "",
        Legs = [.. legs.Select(leg => BoardLegView.Of(leg, week)).OrderBy(leg => leg.OffBlocks?.At ?? Instant.MaxValue)
            .ThenBy(leg => leg.Trip, StringComparer.Ordinal).ThenBy(leg => leg.Number)],
    };
}
