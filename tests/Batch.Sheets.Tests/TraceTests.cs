namespace Batch.Sheets.Tests;

public class TraceTests
{
    private static readonly SheetModel Model = SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4);

    private static TracedPage Trace(string text, string partial = "") =>
        new SheetRenderer(TemplateFolder.With(new Dictionary<string, string> { ["t.html"] = text, ["_p.html"] = partial })).Trace("t.html", Model);

    [Fact]
    public void A_traced_page_is_the_page_that_is_rendered()
    {
        var renderer = new SheetRenderer(TemplateFolder.Shipped);
        Assert.All(SheetModels.All(SampleWeek.Made, SampleWeek.Facts, PaperSize.A4), sheet =>
        {
            var traced = renderer.Trace(sheet.Template, sheet.Model);
            Assert.Empty(traced.Problems);
            Assert.Equal(renderer.Render(sheet.Template, sheet.Model).Html, traced.Html);
        });
    }

    [Fact]
    public void A_place_of_the_page_is_led_back_to_the_line_that_wrote_it()
    {
        var page = Trace("one\n{{~ for k in 1..3 ~}}\n<p>{{ k }}</p>\n{{~ end ~}}\n{{ include '_p.html' }}\nlast", "\n<i>p</i>");
        var lines = page.Html.Split('\n');
        (string, int)? Of(string text)
        {
            var line = Array.FindIndex(lines, candidate => candidate.Contains(text, StringComparison.Ordinal));
            return page.PlaceOf(line + 1, lines[line].IndexOf(text, StringComparison.Ordinal) + 1);
        }

        Assert.Equal(("t.html", 1), Of("one"));
        Assert.Equal(("t.html", 3), Of("<p>2"));
        Assert.Equal(("_p.html", 2), Of("<i>"));
        Assert.Equal(("t.html", 6), Of("last"));
    }

    [Fact]
    public void Wrong_names_are_noted_each_once_and_the_rest_is_rendered()
    {
        var page = Trace("{{ for leg in legs }}{{ leg.plam }}{{ end }}{{ tripp }} end");
        Assert.Equal(["plan", "trip"], page.Problems.Select(problem => problem.Near));
        Assert.EndsWith(" end", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void What_follows_from_a_wrong_name_is_not_a_second_problem() =>
        Assert.Equal("plan", Assert.Single(Trace("{{ legs[0].plam.fuel.trip | lb }}").Problems).Near);
}
