using System.Globalization;
using CsvHelper;
using NodaTime.Text;

namespace Batch.Sheets.Register;

/// <summary>Writes the register as comma-separated text.</summary>
internal static class CsvRegister
{
    private static readonly CsvWriterOptions Options = CsvWriterOptions.Default with { NewLine = "\r\n", WriteByteOrderMark = true };

    public static byte[] Write(IEnumerable<RegisterRow> rows)
    {
        using var buffer = new MemoryStream();
        using (var csv = CsvWriter.Create(buffer, Options, leaveOpen: true))
        {
            csv.WriteRecord([.. FindingsTable.Columns]);
            foreach (var row in rows)
                csv.WriteRecord([.. Cells(row)]);
        }
        return buffer.ToArray();
    }

    /// <summary>A text that a spreadsheet will not run: one that begins like a formula gets an apostrophe before it.</summary>
    /// <remarks>Source of the characters: OWASP, CSV Injection: =, +, -, @, tab, carriage return.</remarks>
    /// <param name="text">The text.</param>
    public static string Guarded(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' ? "'" + text : text;

    private static IEnumerable<string> Cells(RegisterRow row)
    {
        var finding = row.Finding;
        var numbers = finding.Numbers;
        return
        [
            Guarded(row.Trip),
            row.Leg > 0 ? row.Leg.ToString(CultureInfo.InvariantCulture) : "",
            Guarded(row.Aircraft),
            row.Date is { } date ? LocalDatePattern.Iso.Format(date) : "",
            Guarded(finding.Check),
            Guarded(finding.Title),
            row.State,
            Number(numbers.Required),
            Number(numbers.Actual),
            Number(numbers.Margin),
            Guarded(finding.Unit),
            Guarded(finding.Text),
            Guarded(finding.Citation),
            finding.IsBasisUnconfirmed ? "to be confirmed" : "",
            Guarded(string.Join("; ", finding.Cells)),
            Guarded(finding.Actor),
            Guarded(finding.NoRemedy.Length > 0 ? finding.NoRemedy : string.Join("; ", finding.Remedies.Select(remedy => remedy.Text))),
            Guarded(row.Override),
            row.Row > 0 ? row.Row.ToString(CultureInfo.InvariantCulture) : "",
        ];
    }

    private static string Number(double? value) =>
        value is { } number && double.IsFinite(number)
            ? ((decimal)Math.Round(number, 2, MidpointRounding.AwayFromZero)).ToString("0.##", CultureInfo.InvariantCulture)
            : "";
}
