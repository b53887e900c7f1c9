using System.Text;
using Batch.Sheets.Register;

namespace Batch.Sheets.Tests;

public class FindingsTableTests
{
    private static string Text(byte[] bytes) => new UTF8Encoding(false).GetString(bytes, 3, bytes.Length - 3);

    [Fact]
    public void It_is_the_table_that_was_looked_through() =>
        Golden.Matches("findings.csv", Text(FindingsTable.Csv(SampleWeek.Made)).Replace("\r\n", "\n", StringComparison.Ordinal));

    [Fact]
    public void It_begins_with_a_byte_order_mark_and_the_names_of_the_columns()
    {
        var bytes = FindingsTable.Csv(SampleWeek.Made);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        Assert.StartsWith("trip,leg,aircraft,date,check,title,state,required,actual,margin,unit,text,citation,basis,cells,actor,remedy,override,row\r\n",
            Text(bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_answer_has_a_row_and_every_unplanned_leg_one_of_its_own()
    {
        var answers = SampleWeek.Made.Legs.Sum(leg => leg.Findings.Length);
        Assert.Equal(answers + 2, FindingsTable.Rows(SampleWeek.Made).Count());
    }

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\tx", "'\tx")]
    [InlineData("\rx", "'\rx")]
    [InlineData("week.xlsx/Legs/F7", "week.xlsx/Legs/F7")]
    [InlineData("", "")]
    public void A_text_that_begins_like_a_formula_is_guarded(string text, string expected) => Assert.Equal(expected, CsvRegister.Guarded(text));

    [Fact]
    public void A_negative_number_stays_a_number()
    {
        var text = Text(FindingsTable.Csv(SampleWeek.Made));
        Assert.Contains(",813,771,-42,lb,", text, StringComparison.Ordinal);
        Assert.Contains(",'=11 kt from the left", text, StringComparison.Ordinal);
    }
}
