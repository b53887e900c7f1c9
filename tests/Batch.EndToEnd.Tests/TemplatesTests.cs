using Batch.Checks;
using Batch.Cli.Pipeline;

namespace Batch.EndToEnd.Tests;

/// <summary><c>templates check</c> and <c>templates values</c> with the real program.</summary>
public sealed class TemplatesTests
{
    private static readonly Lazy<CheckedWeek> Week = new(() => DemonstrationWeek.Make(new Progress<RunProgress>(), CancellationToken.None));

    [Fact]
    public void The_shipped_templates_pass()
    {
        var (status, output, _) = SampleRun.Run("templates", "check");
        Assert.Equal((0, ""), (status, string.Concat(output.Split('\n')[..^2])));
        Assert.EndsWith("nothing is wrong.", output.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_week_of_ones_own_can_be_tried()
    {
        using var folder = new TemporaryFolder();
        SampleRun.Run("new", folder.Path);
        var (status, output, _) =
            SampleRun.Run("templates", "check", "--week", Path.Combine(folder.Path, "operator.xlsx"), Path.Combine(folder.Path, "week.xlsx"));
        Assert.Equal(0, status);
        Assert.Matches("^[0-9]+ sheets tried: nothing is wrong.$", output.TrimEnd());
    }

    [Fact]
    public void Problems_end_with_status_2_and_stand_one_a_line()
    {
        using var folder = new TemporaryFolder();
        Write(folder, "_fuel.html", "{{ $1.plan.fuel.trp | lb }}\n{{ $1.plan.fuel.taxy | lb }}\n{{ if false }}\nb\nc\n{{ end }}");
        var (status, output, _) = SampleRun.Run("templates", "check", folder.Path);
        Assert.Equal(2, status);
        Assert.Equal(
            [
                "_fuel.html(1,17): There is no value `trp` here; did you mean `trip`?",
                "_fuel.html(2,17): There is no value `taxy` here; did you mean `taxi`?",
                "note: no sheet of this week came to _fuel.html, lines 4-5; what is wrong there was not seen.",
            ],
            output.TrimEnd().Split('\n')[..^1].Select(line => line.TrimEnd()));
        Assert.EndsWith(" sheets tried: 2 problems.", output.TrimEnd(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("_fuel.html", "\n{{ $1.plan.fuel.trp | lb }}", "_fuel.html(2,", "did you mean `trip`?")]
    [InlineData("_fuel.html", "\n{{ if $1 }}", "_fuel.html(2,", "<end>")]
    [InlineData("_fuel.html", "a\n<marquee>b</marquee>", "_fuel.html(2):", "<marquee>")]
    [InlineData("_fuel.html", "\n\n{{ if true }}\n<p style=\"position: fixed\">b</p>{{ end }}", "_fuel.html(4):", "position: value not supported: fixed")]
    [InlineData("_fuel.html", "{{ include '_fule.html' }}", "_fuel.html(1,", "did you mean `_fuel.html`?")]
    [InlineData("_board.css", "{{ x }}", "_board.css(1,", "There is no value or function `x`")]
    [InlineData("trip-sheat.html", "mine", "trip-sheat.html:", "did you mean `trip-sheet.html`?")]
    [InlineData("_mine.html", "{{ for }}", "_mine.html(1,", "")]
    [InlineData("mail.txt", "Dear crew", "mail.txt(1,1)", "The first line must give the subject")]
    public void What_is_wrong_in_a_template_is_named_by_file_and_line(string file, string text, string place, string says)
    {
        var problem = Assert.Single(Check(file, text).Problems, problem => problem.ToString().StartsWith(place, StringComparison.Ordinal));
        Assert.Contains(says, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_wider_than_the_page_is_named()
    {
        var problems = Check("_fuel.html",
            "<p>a</p>\n<table>\n<tr><td style=\"white-space: nowrap\">" + string.Concat(Enumerable.Repeat("wide ", 60)) + "</td></tr>\n</table>").Problems;
        Assert.Contains(problems, problem => problem.ToString().StartsWith("_fuel.html(3): On paper: ",
            StringComparison.Ordinal) && problem.Text.Contains("off the right edge of the page", StringComparison.Ordinal));
    }

    [Fact]
    public void A_template_of_ones_own_that_no_sheet_uses_is_said()
    {
        var report = Check("_signature-lines-of-ours.html", "mine");
        Assert.Equal("_signature-lines-of-ours.html", Assert.Single(report.Unused));
        Assert.Empty(report.Problems);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        var (status, _, errors) = SampleRun.Run("templates", "check", "no-such-folder");
        Assert.Equal(2, status);
        Assert.Contains("no-such-folder", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_values_lists_values_with_examples()
    {
        using var folder = new TemporaryFolder();
        var (status, output, _) = SampleRun.Run("templates", "values", folder.Path);
        Assert.Equal(0, status);
        Assert.Contains("values.html", output, StringComparison.Ordinal);
        var page = File.ReadAllText(Path.Combine(folder.Path, "values.html"));
        Assert.All(["legs[].plan.fuel.trip", "legs[].unplanned.why", "days[].aircraft[].legs[].worst", "Example Air (invented)"],
            text => Assert.Contains(text, page, StringComparison.Ordinal));
    }

    private static TemplateCheckReport Check(string file, string text)
    {
        using var folder = new TemporaryFolder();
        Write(folder, file, text);
        return TemplateCheck.Of(TemplateReading.Of(folder.Path, ""), Week.Value, ProgramFacts.At(Instant.FromUnixTimeSeconds(0)), new Progress<RunProgress>(),
            CancellationToken.None);
    }

    private static void Write(TemporaryFolder folder, string file, string text)
    {
        Directory.CreateDirectory(folder.Path);
        File.WriteAllText(Path.Combine(folder.Path, file), text);
    }
}
