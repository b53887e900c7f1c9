namespace Batch.Sheets.Tests;

public class TemplateTests
{
    private static readonly SheetModel Model = SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4);

    private static string Render(string text, string partial = "")
    {
        var result = new SheetRenderer(TemplateFolder.With(new Dictionary<string, string> { ["t.html"] = text, ["_p.html"] = partial }))
            .Render("t.html", Model);
        Assert.Empty(result.Problems);
        return result.Html;
    }

    [Theory]
    [InlineData("{{ manifest[1].name }}", "Olaf &lt;script&gt;alert(1)&lt;/script&gt; Reed")]
    [InlineData("{{ '<b>' }}", "&lt;b&gt;")]
    [InlineData("{{ '<b>' | raw }}", "<b>")]
    [InlineData("<a title=\"{{ '\"x' }}\">", "<a title=\"&quot;x\">")]
    [InlineData("{{ \"it's\" }}", "it&#39;s")]
    [InlineData("<i>{{ operator.name }}</i>", "<i>Skerry Air &amp; Sons</i>")]
    public void Values_are_written_as_text_unless_marked(string template, string expected) => Assert.Equal(expected, Render(template));

    [Fact]
    public void An_included_partial_is_markup_and_its_values_are_escaped_once() =>
        Assert.Equal("<p>a &amp; b</p>", Render("{{ include '_p.html' 'a & b' }}", "<p>{{ $1 }}</p>"));

    [Theory]
    [InlineData("legs[0].plan.card.empty_weight | lb", "5,240")]
    [InlineData("legs[0].plan.card.empty_weight | kg", "2,377")]
    [InlineData("legs[0].plan.card.empty_weight | kg 1", "2,376.8")]
    [InlineData("legs[0].plan.card.level | ft", "14,000")]
    [InlineData("legs[0].plan.card.level | fl", "FL140")]
    [InlineData("legs[0].plan.card.level | metres", "4,267")]
    [InlineData("legs[0].plan.fuel.final_reserve_time | hm", "0:45")]
    [InlineData("legs[0].plan.fuel.final_reserve_time | minutes", "45")]
    [InlineData("legs[0].plan.times.off_blocks | utc", "14:30")]
    [InlineData("legs[0].plan.times.off_blocks | local", "09:30")]
    [InlineData("legs[0].plan.times.off_blocks.zone_name", "EST")]
    [InlineData("legs[0].plan.times.on_blocks.zone_name", "UTC−1")]
    [InlineData("legs[0].plan.departure.temperature | celsius", "11")]
    [InlineData("legs[0].plan.departure.temperature | fahrenheit", "52")]
    [InlineData("legs[0].plan.departure.headwind | kt", "+8")]
    [InlineData("legs[0].plan.log[1].variation | east_west", "12°W")]
    [InlineData("legs[0].plan.alternates[0].magnetic_course | deg", "312")]
    [InlineData("legs[0].plan.fuel.before | usg", "62")]
    [InlineData("legs[0].plan.fuel.before | litres", "237")]
    [InlineData("legs[0].second_pilot.code", "BEN")]
    [InlineData("null | lb", "–")]
    public void A_template_chooses_the_unit(string expression, string expected) => Assert.Equal(expected, Render("{{ " + expression + " }}"));

    [Fact]
    public void The_same_sheet_in_kilograms_and_litres_is_an_edit_of_the_template()
    {
        var shipped = TemplateFolder.Shipped;
        var texts = shipped.Names.ToDictionary(name => name, name => (shipped.Text(name)
            ?? "").Replace("| lb }}", "| kg }}", StringComparison.Ordinal).Replace("| usg }}", "| litres }}", StringComparison.Ordinal));
        var result = new SheetRenderer(TemplateFolder.With(texts)).Render(SheetModels.TripSheet, Model);
        Assert.Empty(result.Problems);
        Assert.Contains("2,377", result.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void Empty_texts_and_lists_count_as_no() => Assert.Equal("no no yes",
        Render("{{ if '' }}yes{{ else }}no{{ end }} {{ if legs[0].plan.departure.why }}yes{{ else }}no{{ end }} {{ if legs }}yes{{ end }}"));

    [Fact]
    public void More_than_a_thousand_steps_of_a_loop_are_allowed() => Assert.Equal("3000", Render("{{ n = 0; for k in 1..3000; n = n + 1; end; n }}"));

    [Fact]
    public void A_style_text_cannot_leave_its_quotes() => Assert.Equal("\"a\\000022\\00005c\\00003cb\"", Render("\"{{ 'a\"\\\\<b' | css_text }}\""));

    [Theory]
    [InlineData("a: b", "a\\00003a\\000020b")]
    [InlineData("a:  b", "a\\00003a\\000020 b")]
    [InlineData("Trip 7", "Trip 7")]
    public void A_space_after_an_escaped_letter_of_a_style_text_is_kept(string text, string css) =>
        Assert.Equal(css, Render("{{ '" + text + "' | css_text }}"));

    [Fact]
    public void A_folder_of_the_user_replaces_shipped_templates_by_name()
    {
        var folder = Directory.CreateTempSubdirectory("templates");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "trip-sheet.html"), "mine {{ trip }}");
            File.WriteAllText(Path.Combine(folder.FullName, "notes.docx"), "not read");
            var own = TemplateFolder.Over(folder.FullName);
            Assert.True(own.IsOwn("trip-sheet.html"));
            Assert.Equal<IEnumerable<string>>(TemplateFolder.Shipped.Names, own.Names);
            Assert.Equal("mine T101", new SheetRenderer(own).Render("trip-sheet.html", Model).Html);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void One_renderer_serves_many_threads()
    {
        var renderer = new SheetRenderer(TemplateFolder.Shipped);
        var pages = new string[8];
        Parallel.For(0, pages.Length, k => pages[k] = renderer.Render(SheetModels.TripSheet, Model).Html);
        Assert.All(pages, page => Assert.Equal(pages[0], page));
    }

    [Fact]
    public async Task A_pipe_or_an_empty_file_in_the_place_of_a_sheet_is_refused_without_waiting_and_an_empty_partial_is_not()
    {
        var folder = Directory.CreateTempSubdirectory("templates");
        try
        {
            var (sheet, partial) = (Path.Combine(folder.FullName, "trip-sheet.html"), Path.Combine(folder.FullName, "_fuel.html"));
            File.WriteAllText(partial, "");
            File.WriteAllText(Path.Combine(folder.FullName, ".#trip-sheet.html"), "an editor's own");
            Assert.Equal<IEnumerable<string>>(TemplateFolder.Shipped.Names, TemplateFolder.Over(folder.FullName).Names);
            File.WriteAllText(sheet, "\n");
            Assert.Contains("trip-sheet.html is empty", Assert.Throws<IOException>(() => TemplateFolder.Over(folder.FullName)).Message,
                StringComparison.Ordinal);
            if (OperatingSystem.IsWindows()) return; // has no pipes with the name of a file
            File.Delete(sheet);
            using (var maker = System.Diagnostics.Process.Start("mkfifo", [sheet])) await maker.WaitForExitAsync();
            var refused = await Task.Run(() => Assert.Throws<IOException>(() => TemplateFolder.Over(folder.FullName))).WaitAsync(TimeSpan.FromSeconds(30));
            Assert.Equal($"{sheet} is empty, or is no file (a pipe or a device); take it away to use the one that is shipped.", refused.Message);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
