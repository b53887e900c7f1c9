using Batch.Sheets.Templates;

namespace Batch.Sheets.Tests;

public class TemplateErrorTests
{
    private static readonly SheetModel Model = SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4);

    private static RenderResult Render(string text, TemplateBounds? bounds = null, string partial = "") =>
        new SheetRenderer(TemplateFolder.With(new Dictionary<string, string> { ["t.html"] = text, ["_p.html"] = partial }), bounds ?? new TemplateBounds())
            .Render("t.html", Model);

    private static TemplateProblem Only(RenderResult result)
    {
        Assert.False(result.IsRendered);
        Assert.Empty(result.Html);
        return Assert.Single(result.Problems);
    }

    [Fact]
    public void A_wrong_value_names_its_file_line_column_and_the_nearest_name()
    {
        var problem = Only(Render("first\n  {{ legs[0].plan.fuel.trp | lb }}"));
        Assert.Equal(("t.html", 2, "trip"), (problem.File, problem.Line, problem.Near));
        Assert.InRange(problem.Column, 6, 30);
        Assert.Contains("did you mean `trip`?", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_name_at_the_top_names_the_nearest_value_or_function()
    {
        Assert.Equal("legs", Only(Render("{{ for leg in legz; end }}")).Near);
        Assert.Equal("litres", Only(Render("{{ legs[0].plan.fuel.trip | litre }}")).Near);
    }

    [Fact]
    public void A_value_of_another_kind_is_refused()
    {
        Assert.Contains("`nm` wants a distance, not an amount of fuel.", Only(Render("{{ legs[0].plan.fuel.trip | nm }}")).Text, StringComparison.Ordinal);
        Assert.Contains("`utc` wants a time of day, not a text.", Only(Render("{{ trip | utc }}")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_or_a_list_is_not_written_as_it_is()
    {
        Assert.Contains("group of values", Only(Render("{{ legs[0].plan.fuel }}")).Text, StringComparison.Ordinal);
        Assert.Contains("list", Only(Render("{{ legs }}")).Text, StringComparison.Ordinal);
    }

    /// <summary>In the words of somebody who writes templates: what is not there, and what to write.</summary>
    [Theory]
    [InlineData("{{ legs[0].unplanned.why }}", "There is no `legs[0].unplanned` here, so `legs[0].unplanned.why` cannot be written; write `{{ if legs[0].unplanned }}` before it and `{{ end }}` after it.")]
    [InlineData("\n{{ for leg in legs; leg.unplanned.why | string.upcase; end }}",
        "There is no `leg.unplanned` here, so `leg.unplanned.why` cannot be written; write `{{ if leg.unplanned }}` before it and `{{ end }}` after it.")]
    [InlineData("{{ $x = legs[0].unplanned; $x[0] }}",
        "There is no `$x` here, so `$x[0]` cannot be written; write `{{ if $x }}` before it and `{{ end }}` after it.")]
    public void A_part_of_nothing_is_named_with_what_to_write(string text, string says)
    {
        var problem = Only(Render(text));
        Assert.Equal(says, problem.Text);
        Assert.Equal(text.StartsWith('\n') ? 2 : 1, problem.Line);
    }

    [Fact]
    public void A_template_that_does_not_parse_names_its_place()
    {
        var problem = Render("a\nb {{ if legs }} c").Problems[0];
        Assert.Equal("t.html", problem.File);
        Assert.Equal(2, problem.Line);
    }

    [Fact]
    public void An_error_in_a_partial_names_the_partial()
    {
        var problem = Only(Render("{{ include '_p.html' }}", partial: "\n\n{{ tripp }}"));
        Assert.Equal(("_p.html", 3, "trip"), (problem.File, problem.Line, problem.Near));
    }

    [Fact]
    public void A_partial_that_does_not_parse_names_the_partial() =>
        Assert.Equal("_p.html", Render("{{ include '_p.html' }}", partial: "{{ if }}").Problems[0].File);

    [Fact]
    public void A_missing_partial_names_the_nearest()
    {
        var problem = Only(Render("\n{{ include '_fule.html' }}"));
        Assert.Equal(("t.html", 2, "_fuel.html"), (problem.File, problem.Line, problem.Near));
    }

    [Fact]
    public void A_missing_template_names_the_nearest() =>
        Assert.Equal("trip-sheet.html", Only(new SheetRenderer(TemplateFolder.Shipped).Render("tripsheet.html", Model)).Near);

    [Theory]
    [InlineData("{{ include '/etc/passwd' }}")]
    [InlineData("{{ include '../secret.html' }}")]
    public void Nothing_outside_the_template_folder_can_be_included(string text) =>
        Assert.Contains("There is no template", Only(Render(text)).Text, StringComparison.Ordinal);

    [Theory]
    [InlineData("{{ date.now }}", "date")]
    [InlineData("{{ math.random 1 2 }}", "random")]
    [InlineData("{{ object.eval '1' }}", "object")]
    [InlineData("{{ regex.match 'a' 'a' }}", "regex")]
    public void Clocks_random_values_and_evaluation_are_not_there(string text, string missing) =>
        Assert.Contains(missing, Only(Render(text)).Text, StringComparison.Ordinal);

    [Fact]
    public void A_loop_without_end_is_stopped() => Assert.False(Render("{{ while true; end }}", new TemplateBounds { LoopSteps = 1_000 }).IsRendered);

    [Fact]
    public void Includes_without_end_are_stopped() => Assert.False(Render("{{ include '_p.html' }}", partial: "{{ include '_p.html' }}").IsRendered);

    [Fact]
    public void A_page_that_is_too_long_is_an_error_and_never_cut_off()
    {
        var result = Render("{{ for k in 1..1000 }}0123456789{{ end }}", new TemplateBounds { Output = 5_000 });
        Assert.False(result.IsRendered);
        Assert.Empty(result.Html);
    }

    [Fact]
    public void A_text_that_is_too_long_is_an_error() =>
        Assert.False(Render("{{ x = 'a' | string.pad_left 100000 }}{{ x }}", new TemplateBounds { Output = 5_000 }).IsRendered);

    [Fact]
    public void A_sheet_that_takes_too_long_is_stopped()
    {
        var problem = Only(Render("{{ for a in 1..20000; for b in 1..20000; c = a + b; end; end }}",
            new TemplateBounds { Time = TimeSpan.FromMilliseconds(60), LoopSteps = int.MaxValue }));
        Assert.Contains("took longer than 0.1 seconds", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_is_not_stopped_because_the_program_stood_still()
    {
        var time = TimeSpan.FromMilliseconds(20);
        var work = TimeSpan.Zero;
        using var clock = new WorkClock(time, () => work);
        Thread.Sleep(time * 20);
        Assert.False(clock.Token.IsCancellationRequested);
        work = time * Environment.ProcessorCount;
        Assert.True(clock.Token.WaitHandle.WaitOne(TimeSpan.FromMinutes(1)));
    }

    [Fact]
    public void A_template_cannot_change_a_value() => Assert.False(Render("{{ legs[0].trip = 'x' }}").IsRendered);

    [Fact]
    public void An_error_costs_only_its_sheet()
    {
        var renderer = new SheetRenderer(TemplateFolder.With(new Dictionary<string, string> { ["t.html"] = "{{ nothing }}" }));
        Assert.False(renderer.Render("t.html", Model).IsRendered);
        Assert.True(renderer.Render(SheetModels.TripSheet, Model).IsRendered);
    }
}
