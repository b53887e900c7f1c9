using Batch.Sheets.Templates;

namespace Batch.Sheets;

/// <summary>Tries templates: renders sheets, and says at the end what no sheet came across.</summary>
/// <param name="templates">The templates.</param>
public sealed class TemplateTrial(TemplateFolder templates)
{
    private static readonly ImmutableArray<string> Rendered = [SheetModels.TripSheet, SheetModels.CrewPacket, SheetModels.LoadSheet, SheetModels.WeekBoard,
        SheetModels.ValuesPage, SheetModels.MailHtml, SheetModels.MailText];
    private const int NearestName = 2; // edits: a slip of the keyboard, not another name
    private readonly SheetRenderer _renderer = new(templates);
    private readonly HashSet<(string File, int Line)> _reached = [];
    private bool _isStopped;

    /// <summary>Renders a sheet, with what is wrong in its templates.</summary>
    /// <param name="templateName">Name of the template.</param>
    /// <param name="model">Its values.</param>
    public TracedPage Render(string templateName, SheetModel model)
    {
        var page = _renderer.Trace(templateName, model);
        _reached.UnionWith(page.Reached);
        _isStopped |= page.Html.Length == 0;
        return page;
    }

    /// <summary>Whether a sheet stopped at a problem, so that what comes after it was not seen.</summary>
    public bool IsStopped => _isStopped;

    /// <summary>
    /// What is wrong in templates that no sheet used: text that cannot be understood, and a file whose name is nearly that of a template and so replaces none.
    /// </summary>
    public IEnumerable<TemplateProblem> Beside() => templates.Names.Where(name => !IsUsed(name))
        .SelectMany(name => _renderer.Syntax(name).Concat(Misnamed(name)));

    /// <summary>The user's own templates that no sheet used, by name; none while a sheet is stopped.</summary>
    public IEnumerable<string> Unused() => _isStopped ? [] : templates.Names.Where(name => templates.IsOwn(name) && !IsUsed(name) && !Misnamed(name).Any());

    /// <summary>Lines of the user's own templates to which no sheet came, so that what is wrong there was not seen; none while a sheet is stopped.</summary>
    public IEnumerable<(string File, ImmutableArray<int> Lines)> NotReached() => _isStopped ? [] : templates.Names
        .Where(name => templates.IsOwn(name) && IsUsed(name))
        .Select(name => (name, LineMarks.Lines(name, templates.Text(name) ?? "").Where(line => !_reached.Contains((name, line))).ToImmutableArray()))
        .Where(pair => !pair.Item2.IsEmpty);

    private bool IsUsed(string name) => Rendered.Contains(name) || _renderer.HasTraced(name);

    private IEnumerable<TemplateProblem> Misnamed(string name)
    {
        if (templates.IsOwn(name) && !TemplateFolder.Shipped.Names.Contains(name) && NearWords.Nearest(name, TemplateFolder.Shipped.Names, 1) is [var near,
            ..] && NearWords.Distance(name, near) <= NearestName)
            yield return new TemplateProblem(name, 0, 0, $"No sheet uses this file, so it changes nothing; did you mean `{near}`?", near);
    }
}
