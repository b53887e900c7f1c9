using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>The Bulletins sheet: raw weather bulletins as pasted.</summary>
internal static class BulletinsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Bulletins", "week", "Raw weather bulletins: winds aloft, METAR, TAF.");

    private static readonly Column<string> Text =
        Plan.Add(ColumnKinds.Text("Text", nameof(RawBulletin.Text), "The bulletin as received.", ColumnKinds.Starred, "Bulletin"));
    private static readonly Column<Instant> Received = Plan.Add(ColumnKinds.Start("Received", nameof(RawBulletin.Received), "When it was received, UTC."));
    private static readonly Column<string> Source =
        Plan.Add(ColumnKinds.Text("Source", nameof(RawBulletin.Source), "Who issued it or passed it on, such as national weather service."));

    /// <summary>The bulletins in book order.</summary>
    public static ImmutableArray<RawBulletin> Read(Shelf shelf)
    {
        var bulletins = ImmutableArray.CreateBuilder<RawBulletin>();
        foreach (var row in shelf.Rows(Plan))
        {
            var bulletin = new RawBulletin(row.NeededText(Text), row.Optional(Received), row.Origin) { Source = row.Text(Source) };
            if (!row.IsLost) bulletins.Add(bulletin);
        }

        return bulletins.ToImmutable();
    }
}
