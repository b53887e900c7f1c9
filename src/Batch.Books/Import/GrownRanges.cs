using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Books.Editing;
using Batch.Books.Packages;

namespace Batch.Books.Import;

/// <summary>Lets a sheet's filter and tables take in rows that were added below their last one, as a spreadsheet program does while one types.</summary>
/// <param name="workbook">The workbook.</param>
/// <param name="part">The part of the sheet.</param>
/// <param name="from">The last filled row before.</param>
/// <param name="to">The last filled row now.</param>
/// <param name="notes">What there is to say.</param>
internal sealed partial class GrownRanges(WorkbookParts workbook, string part, int from, int to, ImportNotes notes)
{
    private const string FilterName = "_xlnm._FilterDatabase";

    /// <summary>Grows what ends at the last row.</summary>
    /// <param name="sheet">Name of the sheet.</param>
    /// <param name="edit">The changes to the sheet.</param>
    public void Grow(string sheet, SheetEdit edit)
    {
        var text = edit.Sheet.Text;
        for (var tag = XmlTags.Next(text, edit.Sheet.DataClose.End); tag is { } found; tag = XmlTags.Next(text, found.End))
        {
            if (!found.IsClose && found.LocalName(text) == "autoFilter" && Grown(text, found) is { } range) edit.Replace(range.Place, range.Text);
        }

        foreach (var table in Relationships.Of(workbook.Package, part).FindAll("table")) Table(sheet, table);
        NamedFilter(sheet);
    }

    private void Table(string sheet, string table)
    {
        var content = workbook.Text(table);
        var text = content.Text;
        var root = XmlTags.Root(text);
        if (Grown(text, root) is null) return;
        if (root.Value(text, "totalsRowCount") is { } totals && totals != "0")
        {
            notes.Say(
                $"the table {root.Value(text, "displayName")} of {sheet} ends with a row of totals: the new rows stand below it; move them into the table");
            return;
        }

        var splices = new Splices();
        foreach (var tag in XmlTags.Of(text).Where(tag => !tag.IsClose && tag.LocalName(text) is "table" or "autoFilter"))
        {
            if (Grown(text, tag) is { } range) splices.Replace(range.Place.Start.Value, range.Place.End.Value, range.Text);
        }

        workbook.Package.Put(table, content.Bytes(splices.Apply(text)));
    }

    // The filter of a sheet stands in a hidden name of the workbook as well.
    private void NamedFilter(string sheet)
    {
        var content = workbook.Text(workbook.Name);
        var text = content.Text;
        var number = workbook.Sheets.ToList().FindIndex(entry => entry.Name == sheet).ToString(CultureInfo.InvariantCulture);
        foreach (var tag in XmlTags.Of(text).Where(
            tag => !tag.IsClose && tag.LocalName(text) == "definedName" && tag.Value(text, "name") == FilterName && tag.Value(text, "localSheetId") == number))
        {
            var end = text.IndexOf('<', tag.End);
            if (end < 0 || LastRow().Match(text[tag.End..end]) is not { Success: true } match || !Ends(match.Groups["row"].Value)) continue;
            var splices = new Splices();
            splices.Replace(tag.End + match.Groups["row"].Index, tag.End + match.Groups["row"].Index + match.Groups["row"].Length, Text(to));
            workbook.Package.Put(workbook.Name, content.Bytes(splices.Apply(text)));
            return;
        }
    }

    private (Range Place, string Text)? Grown(string text, XmlTag tag)
    {
        if (tag.ValueRange(text, "ref") is not { } place || LastRow().Match(text[place]) is not { Success: true } match || !Ends(match.Groups["row"].Value))
            return null;
        return (place, text[place][..match.Groups["row"].Index] + Text(to));
    }

    // A range that ends above the last row was not meant to hold it; one that ends below the new one holds them already.
    private bool Ends(string row) => int.TryParse(row, NumberStyles.None, CultureInfo.InvariantCulture, out var last) && last >= from && last < to;

    private static string Text(int row) => row.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@":\$?[A-Z]{1,3}\$?(?<row>[0-9]{1,7})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex LastRow();
}
