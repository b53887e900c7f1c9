using Batch.Checks;

namespace Batch.Sheets.Register;

/// <summary>The sheet Crew: every duty with what is used and left of every limit, and for each person where it is tightest in the week.</summary>
internal static class DutySheet
{
    private static readonly ImmutableArray<BookColumn> Leading =
    [
        new("Person", 8), new("Duty", 7), new("Report local", 16), new("Release local", 16), new("From", 7), new("To", 7), new("Legs", 26),
        new("Flight time [h]", 8), new("Duty [h]", 8), new("Rest before [h]", 8), new("Night landings", 8),
    ];

    /// <summary>Writes it.</summary>
    /// <param name="book">The workbook.</param>
    /// <param name="week">The week.</param>
    public static void Write(WorkbookWriter book, CheckedWeek week)
    {
        var limits = week.DutyTables.SelectMany(table => table.Limits).DistinctBy(limit => limit.Key).ToImmutableArray();
        var columns = Leading.AddRange(limits.SelectMany(Columns)).Add(new("Not wholly known", 40)).Add(new("Rules", 50));
        book.Sheet("Crew", columns, frozen: 2, sheet =>
        {
            foreach (var table in week.DutyTables)
            {
                Rows(sheet, table, limits);
            }
        }, isLarge: true);
    }

    private static IEnumerable<BookColumn> Columns(DutyLimit limit)
    {
        var name = char.ToUpperInvariant(limit.Name[0]) + limit.Name[1..];
        yield return new BookColumn($"{name} [{limit.Unit}]", 12);
        if (limit.Limit is not null) yield return new BookColumn($"{(limit.IsLeast ? "Beyond the least" : "Left")} [{limit.Unit}]", 9);
    }

    private static void Rows(SheetWriter sheet, DutyTable table, ImmutableArray<DutyLimit> limits)
    {
        for (var i = 0; i < table.Periods.Length; i++)
        {
            var period = table.Periods[i];
            sheet.Row(cells =>
            {
                cells.Text(table.Code);
                cells.Number(i + 1, CellStyle.Whole);
                cells.DateTime(period.Report.InZone(period.ReportZone).LocalDateTime);
                cells.DateTime(period.Release.InZone(period.ReleaseZone).LocalDateTime);
                cells.Text(period.From);
                cells.Text(period.To);
                cells.Text(string.Join(", ", period.Legs), CellStyle.Wrapped);
                cells.Number(period.FlightTime.TotalHours, CellStyle.Tenths);
                cells.Number(period.Length.TotalHours, CellStyle.Tenths);
                cells.Number(period.RestBefore?.TotalHours, CellStyle.Tenths);
                cells.Number(period.NightLandings, CellStyle.Whole);
                Limits(cells, period.Limits, limits, CellStyle.Tenths);
                cells.Text("");
            });
        }

        sheet.Row(cells =>
        {
            cells.Text(table.Code, CellStyle.Strong);
            cells.Text("week", CellStyle.Strong);
            for (var column = 2; column < 6; column++) cells.Text("");
            cells.Text(table.Periods.IsEmpty ? "no duty" : "where it is tightest", CellStyle.Strong);
            cells.Number(table.FlightTime.TotalHours, CellStyle.StrongTenths);
            for (var column = 8; column < Leading.Length; column++) cells.Text("");
            Limits(cells, table.Limits, limits, CellStyle.StrongTenths);
            cells.Text(string.Join("; ", table.Limits.Select(limit => limit.Citation).Where(citation => citation.Length > 0).Distinct(StringComparer.Ordinal)),
                CellStyle.Wrapped);
        });
    }

    private static void Limits(SheetWriter cells, ImmutableArray<DutyLimit> own, ImmutableArray<DutyLimit> all, CellStyle style)
    {
        foreach (var column in all)
        {
            var limit = own.FirstOrDefault(limit => limit.Key == column.Key);
            cells.Number(limit?.Used, style);
            if (column.Limit is not null) cells.Number(limit?.Left, limit?.Left < 0 ? CellStyle.Fail : style);
        }

        cells.Text(string.Join(" ",
            own.Where(limit => !limit.IsKnown)
                .Select(limit => $"{char.ToUpperInvariant(limit.Name[0])}{limit.Name[1..]}: {limit.Unknown}")), CellStyle.Wrapped);
    }
}
