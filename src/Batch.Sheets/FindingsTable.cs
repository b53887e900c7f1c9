using Batch.Checks;
using Batch.Sheets.Register;

namespace Batch.Sheets;

/// <summary>The file <c>findings.csv</c>: every answer of every check, one row each, worst first within a leg.</summary>
public static class FindingsTable
{
    /// <summary>Names of the columns, in order.</summary>
    public static ImmutableArray<string> Columns { get; } =
        ["trip", "leg", "aircraft", "date", "check", "title", "state", "required", "actual", "margin", "unit", "text", "citation", "basis", "cells", "actor",
            "remedy", "override", "row"];

    /// <summary>The file as UTF-8 with a byte order mark (spreadsheets need it), RFC 4180: commas, lines ended by CR LF.</summary>
    /// <remarks>A text that a spreadsheet would take for a formula is written with an apostrophe before it. A leg that could not be planned has one row of its
    /// own, check <c>PLAN</c>. Where the leg number could not be read <c>leg</c> is empty and <c>row</c> is the row of the Legs sheet.</remarks>
    /// <param name="week">The checked week.</param>
    public static byte[] Csv(CheckedWeek week) => CsvRegister.Write(Rows(week));

    /// <summary>The rows behind the file, in its order.</summary>
    /// <param name="week">The checked week.</param>
    public static IEnumerable<RegisterRow> Rows(CheckedWeek week) => week.Legs.SelectMany(RegisterRows.Of);
}
