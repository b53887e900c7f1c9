using Batch.Checks;
using Batch.Paper;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>Tries templates against a week: every sheet is rendered and printed on both papers, nothing is written.</summary>
public static class TemplateCheck
{
    /// <summary>Tries the templates.</summary>
    /// <param name="templates">The templates.</param>
    /// <param name="week">The week whose sheets are rendered.</param>
    /// <param name="facts">When and by which version.</param>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between sheets.</param>
    public static TemplateCheckReport Of(TemplateFolder templates, CheckedWeek week, RunFacts facts, IProgress<RunProgress> progress, CancellationToken cancel)
    {
        var trial = new TemplateTrial(templates);
        var printer = new PdfPrinter();
        var problems = new HashSet<TemplateProblem>();
        (PaperSize Paper, SheetToRender Sheet)[] sheets = [.. Enum.GetValues<PaperSize>()
            .SelectMany(paper => SheetModels.All(week, facts, paper).Where(sheet => sheet.IsPrinted || paper == default).Select(sheet => (paper, sheet)))];
        for (var i = 0; i < sheets.Length; i++)
        {
            progress.Report(new RunProgress("sheets", i, sheets.Length));
            var (paper, sheet) = sheets[i];
            var page = trial.Render(sheet.Template, sheet.Model);
            problems.UnionWith(page.Problems);
            if (sheet.IsPrinted && page.Html.Length > 0) problems.UnionWith(OnPaper(printer, page, sheet.Template, paper, cancel));
        }

        progress.Report(new RunProgress("sheets", sheets.Length, sheets.Length));
        problems.UnionWith(trial.Beside());
        if (CrewLetters.Of(week, facts) is [var letter, ..]) problems.UnionWith(MailBody.Render(new SheetRenderer(templates), letter).Problems);
        return new TemplateCheckReport(
            [.. problems.OrderBy(problem => problem.File, StringComparer.Ordinal).ThenBy(problem => problem.Line).ThenBy(problem => problem.Column)
                .ThenBy(problem => problem.Text, StringComparer.Ordinal)],
            [.. trial.Unused()],
            [.. trial.NotReached()],
            trial.IsStopped,
            sheets.Length);
    }

    private static TemplateProblem[] OnPaper(PdfPrinter printer, TracedPage page, string template, PaperSize paper, CancellationToken cancel)
    {
        try
        {
            var printed = printer.Print(page.Html, new PrintOptions { PageSize = paper.ToString(), CancellationToken = cancel });
            return [.. printed.Unsupported.Select(note => At(page, template, note.Line, note.Column, $"On paper: {Subject(note)}: {note.Text}."))];
        }
        catch (PaperException stopped)
        {
            return [At(page, template, stopped.Line, 1, $"Cannot be printed: <{stopped.Tag}>, {stopped.Reason}.")];
        }
    }

    private static string Subject(Unsupported note) => note.Property.Length > 0 ? note.Property : note.Tag is "style" or "@page" ? note.Tag : $"<{note.Tag}>";

    private static TemplateProblem At(TracedPage page, string template, int line, int column, string text) =>
        page.PlaceOf(line, column) is { } place ? new TemplateProblem(place.File, place.Line, 0, text, "") : new TemplateProblem(template, 0, 0, text, "");
}
