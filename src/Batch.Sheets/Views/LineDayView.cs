using System.Globalization;
using Batch.Sheets.Board;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Views;

/// <summary>One local day of the time line.</summary>
internal sealed record LineDayView
{
    private static readonly LocalDatePattern DayName = LocalDatePattern.Create("ddd d MMM", CultureInfo.InvariantCulture);

    [Value("The day, such as Mon 7 Dec")]
    public required string Name { get; init; }

    [Value("The date, such as 2026-12-07")]
    public required string Date { get; init; }

    [Value("Where it begins [% of the line]")]
    public required double Place { get; init; }

    [Value("How wide it is [% of the line]")]
    public required double Width { get; init; }

    public static ImmutableArray<LineDayView> Of(Stretch stretch)
    {
        var days = ImmutableArray.CreateBuilder<LineDayView>();
        for (var date = stretch.From.InZone(stretch.Zone).Date; date.AtStartOfDayInZone(stretch.Zone).ToInstant() is var start
            && start < stretch.To; date = date.PlusDays(1))
        {
            days.Add(new LineDayView
            {
                Name = DayName.Format(date),
                Date = LocalDatePattern.Iso.Format(date),
                Place = stretch.PlaceOf(start),
                Width = stretch.WidthOf(start, date.PlusDays(1).AtStartOfDayInZone(stretch.Zone).ToInstant()),
            });
        }

        return days.DrainToImmutable();
    }
}
