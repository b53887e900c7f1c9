using Batch.Testing;

namespace Batch.Flight.Tests.Testing;

public sealed class CheckFileTests
{
    private const string Good =
        "# source: A table, 2020\n# columns: id, length [m] (0.1), what\n# tolerance: 0.1\n# note: a remark\nR1,2.50,\"a, \"\"b\"\"\"\nR2,,c\n";

    [Fact]
    public void A_file_gives_its_head_and_rows()
    {
        var file = CheckFile.Parse("good.csv", Good);
        Assert.Equal(["A table, 2020"], file.Sources);
        Assert.Equal("0.1", file.Tolerance);
        Assert.Equal(2.5, file["R1"].Number("length"));
        Assert.Equal(0.005, file["R1"].HalfDigit("length"), 1e-8);
        Assert.Equal("a, \"b\"", file["R1"]["what"]);
        Assert.Null(file["R2"].NumberOrNothing("length"));
        Assert.Equal([["R2"]], file.Ids(r => r["what"] == "c"));
    }

    [Theory]
    [InlineData("# source: A table, 2020\n", "")]
    [InlineData("# source: A table, 2020", "# source:")]
    [InlineData("# tolerance: 0.1\n", "")]
    [InlineData("# columns: id, length [m] (0.1), what\n", "")]
    [InlineData("R2,,c", "R2,c")]
    [InlineData("R2,,c", "R1,,c")]
    [InlineData("# note: a remark", "# a remark")]
    [InlineData("R1,2.50,\"a, \"\"b\"\"\"\nR2,,c\n", "")]
    public void A_file_without_source_tolerance_columns_or_with_a_broken_row_is_refused(string part, string instead) =>
        Assert.Throws<FormatException>(() => CheckFile.Parse("bad.csv", Good.Replace(part, instead, StringComparison.Ordinal)));

    [Fact]
    public void A_source_may_stand_in_each_row_but_not_be_missing_there()
    {
        const string Text = "# source: K = A table\n# columns: id, v, source\n# tolerance: 0\nR1,1,K\nR2,2,\"Another, 1999\"\n";
        Assert.Equal(2, CheckFile.Parse("a.csv", Text).Rows.Count);
        Assert.Throws<FormatException>(() => CheckFile.Parse("a.csv", Text.Replace("R1,1,K", "R1,1,", StringComparison.Ordinal)));
        Assert.Throws<FormatException>(() => CheckFile.Parse("a.csv", Text.Replace("R1,1,K", "R1,1,L", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_root_of_the_repository_is_found() => Assert.True(File.Exists(RepositoryRoot.PathOf("Batch.sln")));
}
