using Batch.Sheets.Board;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Views;

/// <summary>One hour of the time line, for its scales.</summary>
internal sealed record LineHourView
{
    private static readonly LocalTimePattern WholeHour = LocalTimePattern.CreateWithInvariantCulture("%H");
    private static readonly LocalTimePattern HourAndMinute = LocalTimePattern.CreateWithInvariantCulture("H:mm");

    [Value("The local hour, such as 6")]
    public required int Hour { get; init; }

    [Value("The same in UTC, such as 11, or 11:30 where the zones differ by half an hour")]
    public required string Utc { get; init; }

    [Value("Where it stands [% of the line]")]
    public required double Place { get; init; }

    public static ImmutableArray<LineHourView> Of(Stretch stretch)
    {
        var hours = ImmutableArray.CreateBuilder<LineHourView>();
        for (var at = stretch.From; at < stretch.To; at += Duration.FromHours(1))
            hours.Add(new LineHourView
            {
                Hour = at.InZone(stretch.Zone).Hour,
                Utc = (at.InUtc().Minute == 0 ? WholeHour : HourAndMinute).Format(at.InUtc().TimeOfDay),
                Place = stretch.PlaceOf(at)
            });
        return hours.DrainToImmutable();
    }
}
