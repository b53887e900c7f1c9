using System.Text.Json;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>A reason to fly a leg although it fails stands wherever the failure does.</summary>
public sealed class OverrideTests
{
    private const string Reason = "agreed by the chief pilot, \"ferry\" only";

    [Fact]
    public void A_reason_is_printed_on_the_sheet_in_the_register_and_in_the_record()
    {
        using var folder = new TemporaryFolder();
        var (_, _, errors) = SampleRun.Run("run", RepositoryRoot.PathOf("input-samples"), "--out", folder.Path, "--no-pdf", "--only", "T106", "--override",
            "t106/1=" + Reason, "--made-at", SampleRun.MadeAt);
        Assert.DoesNotContain("fault", errors, StringComparison.Ordinal);
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder.Path, "run.json")));
        var leg = run.RootElement.GetProperty("legs").EnumerateArray().Single(leg => leg.GetProperty("leg").GetInt32() == 1);
        Assert.Equal(("fail", Reason), (leg.GetProperty("state").GetString(), leg.GetProperty("override").GetString()));
        Assert.False(run.RootElement.GetProperty("wholeWeek").GetBoolean());
        Assert.Contains("flown all the same because: agreed by the chief pilot, &quot;ferry&quot; only",
            File.ReadAllText(Path.Combine(folder.Path, "sheets", "T106.html")), StringComparison.Ordinal);
        var rows = File.ReadAllLines(Path.Combine(folder.Path, "findings.csv")).Skip(1).ToArray();
        Assert.Contains(rows, row => row.Contains(",fail,", StringComparison.Ordinal) && row.EndsWith("\"agreed by the chief pilot, \"\"ferry\"\" only\",",
            StringComparison.Ordinal));
        Assert.All(rows.Where(row => row.Contains(",pass,", StringComparison.Ordinal)),
            row => Assert.DoesNotContain("agreed by", row, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("T106/9=x", "T106/1")]
    [InlineData("T106/1", "reason")]
    [InlineData("T106/1= ", "reason")]
    public void A_leg_that_is_not_there_and_a_reason_that_is_missing_are_complained_of(string written, string said)
    {
        using var folder = new TemporaryFolder();
        var (status, _, errors) = SampleRun.Run("run", RepositoryRoot.PathOf("input-samples"), "--out", folder.Path, "--no-pdf", "--override", written);
        Assert.Equal(2, status);
        Assert.Contains("--override " + written.Trim().Split('=')[0], errors, StringComparison.Ordinal);
        Assert.Contains(said, errors, StringComparison.Ordinal);
    }
}
