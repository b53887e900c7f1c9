using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Sheets.Views;

/// <summary>Where and on which day a leg departs.</summary>
internal static class DeparturePlace
{
    /// <summary>Ident as in the airports sheet, and the local day of off blocks; null where either could not be read.</summary>
    public static (string Airport, LocalDate Day)? Of(LegPlan plan, OperatorWeek week)
    {
        var (read, broken) = LegView.Names(plan);
        var written = read?.From ?? broken?.From ?? "";
        var known = week.Airports.GetValueOrDefault(written);
        var day = read is null ? broken?.Date : known is null ? read.OffBlocksLocal.Date : read.OffBlocks.InZone(known.Zone).Date;
        return written.Length == 0 || day is not { } date ? null : (known?.Ident ?? written, date);
    }
}
