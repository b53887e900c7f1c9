using System.Text;
using Batch.Books.Cells;
using Batch.Books.Csv;

namespace Batch.Books.Tests.Csv;

public sealed class CsvTests
{
    private static readonly CellRef Place = new(0, 0, "week/Legs");

    [Theory]
    [InlineData("a;b;c\n1,5;2;3", ';')]
    [InlineData("a,b,c\n1;5,2,3", ',')]
    [InlineData("a\tb\tc\n1,5\t2\t3", '\t')]
    [InlineData("\"a;b;c;d\",e,f\n", ',')]
    [InlineData("Title\na;b\n", ';')]
    [InlineData("alone\n", ',')]
    [InlineData("", ',')]
    [InlineData("Text\n\"METAR, with, commas\"\n", ',')]
    [InlineData("Item;Value\nName;Some Air\nBriefing topics;smoking, belts, seat backs, doors\n", ';')]
    [InlineData("Item\tValue\nName\tSome Air\nBriefing topics\tsmoking, belts, seat backs; doors\n", '\t')]
    [InlineData("Item,Value\nName,Some Air\nBriefing topics,smoking; belts; seat backs; doors\n", ',')]
    [InlineData("Settings, one a row, of an invented operator;\nItem;Value\n", ';')]
    [InlineData("Station;Text\nXAND;TEMPO 1,5\nXBEL;1,5 2,5\n", ';')]
    public void The_delimiter_is_detected(string text, char expected) => Assert.Equal(expected, CsvText.Delimiter(text));

    [Fact]
    public void The_encoding_is_detected()
    {
        const string Text = "Añd ü – €";
        var ansi = CodePagesEncodingProvider.Instance.GetEncoding(1252) ?? throw new InvalidOperationException();
        Assert.Equal(Text, CsvText.Decode(new UTF8Encoding(false).GetBytes(Text)));
        Assert.Equal(Text, CsvText.Decode([.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(Text)]));
        Assert.Equal(Text, CsvText.Decode([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Text)]));
        Assert.Equal(Text, CsvText.Decode(ansi.GetBytes(Text)));
        Assert.Equal("", CsvText.Decode([]));
        const string Wide = "Trip,Name\nT1,Añd – €\n";
        Assert.Equal(Wide, CsvText.Decode(Encoding.Unicode.GetBytes(Wide)));
        Assert.Equal(Wide, CsvText.Decode(Encoding.BigEndianUnicode.GetBytes(Wide)));
    }

    [Fact]
    public void Quotes_line_breaks_and_blank_lines_keep_the_numbering_of_a_spreadsheet()
    {
        var sheet = CsvFolder.Sheet("Legs", "a,\"b \"\"x\"\"\",\"two\nlines\"\r\n\r\n1,,3\r\n,,\r\n4"u8.ToArray(), Place);
        Assert.Equal([1, 3, 5], sheet.Rows.Select(row => row.Number));
        Assert.Equal(["a", "b \"x\"", "two\nlines"], sheet.Rows[0].Cells.Select(cell => cell.Text));
        Assert.Equal((true, "3", true), (sheet.Rows[1][2].IsBlank, sheet.Rows[1][3].Text, sheet.Rows[1][9].IsBlank));
    }

    [Theory]
    [InlineData("a;b\n1,5;2\n", true)]
    [InlineData("a;b\n1.5;2\n", false)]
    [InlineData("a;b\n1.500;2\n", true)]
    [InlineData("a,b\n1.5,2\n", false)]
    public void The_decimal_comma_holds_with_semicolons_unless_the_file_says_otherwise(string text, bool expected) =>
        Assert.Equal(expected, CsvFolder.Sheet("Legs", Encoding.UTF8.GetBytes(text), Place).DecimalComma);

    [Fact]
    public void A_stray_quotation_mark_is_a_caution()
    {
        var sheet = CsvFolder.Sheet("Legs", "a,b\n1,x\"y\n2,\"never closed\n3,4\n"u8.ToArray(), Place);
        Assert.Contains(sheet.Remarks, remark => remark.State == State.Caution && remark.At.Row == 2);
    }

    [Theory]
    [InlineData("a,b\n1,\"never closed\n3,4\n", 2, "1|never closed|3|4")]
    [InlineData("a,b\n\"1,x\n3,\"y\"\n5,6\n", 2, "1|x|3|y|5|6")]
    [InlineData("a,b\n\"1,x\r\n3,y\n5,\"z \"\"q\"\"\"\n", 2, "1|x|3|y|5|z \"q\"")]
    [InlineData("a,b\n1,\"x\ry\"\r\n\"3,4", 3, "1|x\ry|3|4")]
    public void A_quotation_mark_that_is_never_closed_swallows_no_row(string text, int row, string cells)
    {
        var sheet = CsvFolder.Sheet("Legs", Encoding.UTF8.GetBytes(text), Place);
        Assert.Equal(cells, string.Join('|', sheet.Rows.Skip(1).SelectMany(cells => cells.Cells).Select(cell => cell.Text)));
        Assert.Equal((row, State.Caution), (Assert.Single(sheet.Remarks).At.Row, sheet.Remarks[0].State));
    }

    [Theory]
    [InlineData("a,b,c,d\n1,2,3,\"tall\n5,6,7,8\"\n9,10,11,12\n", 2, "1|2|3|tall|5|6|7|8\"|9|10|11|12")]
    [InlineData("a,b,c,d\n1,2,3,\"tall\n5,6,7,8\n9,10,11\",12\n13,14,15,16\n", 2, "1|2|3|tall|5|6|7|8|9|10|11\"|12|13|14|15|16")]
    [InlineData("a,b,c,d\r\n1,\"2,3,4\r\n5,\"6, 7\",8,9\r\n9,8,7,6\"\r\n", 2, "1|2|3|4|5|6, 7|8|9|9|8|7|6\"")]
    public void Two_stray_quotation_marks_swallow_no_row_between_them(string text, int row, string cells)
    {
        var sheet = CsvFolder.Sheet("Legs", Encoding.UTF8.GetBytes(text), Place);
        Assert.Equal(cells, string.Join('|', sheet.Rows.Skip(1).SelectMany(cells => cells.Cells).Select(cell => cell.Text)));
        Assert.Contains(sheet.Remarks,
            remark => remark.At.Row == row && remark.State == State.Caution && remark.Text.Contains("left out", StringComparison.Ordinal));
    }

    [Fact]
    public void A_text_whose_lines_look_like_rows_is_said_at_its_cell()
    {
        var sheet = CsvFolder.Sheet("Legs", "a,b,c,d,e,f\n1,2,3,4,5,\"tall\n5,6,7,8\"\n9,10,11,12,13,\"two\nlines, with, commas\"\n"u8.ToArray(), Place);
        Assert.Equal((2, 6, State.Caution), (Assert.Single(sheet.Remarks).At.Row, sheet.Remarks[0].At.Column, sheet.Remarks[0].State));
    }

    [Theory]
    [InlineData("a,b\n1,\"two\nlines, and a comma\"\n3,4")]
    [InlineData("a,b\n\"\",\"\"\"\"\n\"x\ny\"")]
    [InlineData("\"a\",\"b\"\r\n\"1\",\"2\"\r\n")]
    [InlineData("Item,Value\nTopics,\"smoking\nbelts, seats\"\nOther,1\n")]
    [InlineData("a,b,c,d\n1,2,3,\"a remark\nof two, lines\"\n5,6,7,8\n")]
    public void Quotation_marks_in_order_stay_as_they_are(string text)
    {
        Assert.Equal((text, []), StrayQuotes.LeftOut(text, ','));
        Assert.Empty(CsvFolder.Sheet("Legs", Encoding.UTF8.GetBytes(text), Place).Remarks);
    }

    [Fact]
    public void A_NUL_is_left_out_and_said()
    {
        var sheet = CsvFolder.Sheet("Legs", "a,b\n1\0,2\n"u8.ToArray(), Place);
        Assert.Equal("1", sheet.Rows[1][1].Text);
        Assert.Single(sheet.Remarks);
    }
}
