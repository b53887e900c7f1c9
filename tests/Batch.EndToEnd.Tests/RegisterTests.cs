using System.Text.Json;
using ClosedXML.Excel;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace Batch.EndToEnd.Tests;

/// <summary>The compliance register of the sample week.</summary>
public sealed class RegisterTests(SampleRun sample) : IClassFixture<SampleRun>
{
    [Fact]
    public void It_is_a_workbook_by_the_schema_of_the_format()
    {
        using var package = SpreadsheetDocument.Open(new MemoryStream(sample.Bytes("register.xlsx")), isEditable: false);
        Assert.Empty(new OpenXmlValidator().Validate(package).Select(error => error.Path?.XPath + ": " + error.Description));
    }

    [Fact]
    public void It_holds_every_answer_of_the_findings_and_a_row_for_every_leg()
    {
        using var book = new XLWorkbook(new MemoryStream(sample.Bytes("register.xlsx")));
        Assert.Equal(["Legs", "Answers", "Crew", "Rules"], book.Worksheets.Select(sheet => sheet.Name));
        var record = JsonDocument.Parse(sample.Bytes("run.json")).RootElement;
        var shown = record.Legs().SelectMany(leg => leg.Items("findings")
            .Select(finding => $"{leg.Key()} {finding.GetProperty("check").GetString()} {finding.State()} {finding.GetProperty("text").GetString()}"));
        var answers = book.Worksheet("Answers").RowsUsed().Skip(1)
            .Select(row => (Key: $"{row.Cell("A").GetString()}/{row.Cell("B").GetString()}", Check: row.Cell("F").GetString(), State: row.Cell("H").GetString(),
                Text: row.Cell("M").GetString())).ToArray();
        Assert.Equal(shown,
            answers.Where(row => row.State is not ("pass" or "not applicable" or "unplanned")).Select(row => $"{row.Key} {row.Check} {row.State} {row.Text}"));
        foreach (var leg in record.Legs())
        {
            var quiet = leg.Items("passed").Concat(leg.Items("notApplicable")).Select(check => check.GetString());
            Assert.Equal(quiet.Order(StringComparer.Ordinal).Distinct(StringComparer.Ordinal), answers.Where(row => row.Key == leg.Key()
                && (row.State is "pass" or "not applicable")).Select(row => row.Check).Order(StringComparer.Ordinal).Distinct(StringComparer.Ordinal));
        }

        Assert.Equal(record.Legs().Count() + 1, book.Worksheet("Legs").LastRowUsed()?.RowNumber());
    }
}
