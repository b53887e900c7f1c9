using System.Collections.Concurrent;
using Batch.Sheets.Templates;
using Scriban;
using Scriban.Syntax;

namespace Batch.Sheets;

/// <summary>
/// Renders templates. A template sees the values of its model and the functions of the house, nothing else: no file, network, process, clock or random value.
/// Safe to share between threads.
/// </summary>
/// <param name="templates">The templates.</param>
/// <param name="bounds">How much a template may take.</param>
public sealed class SheetRenderer(TemplateFolder templates, TemplateBounds bounds)
{
    private const string PlainText = ".txt";
    private readonly ConcurrentDictionary<string, Template> _parsed = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Template> _marked = new(StringComparer.Ordinal);

    /// <summary>A renderer with the usual bounds.</summary>
    /// <param name="templates">The templates.</param>
    public SheetRenderer(TemplateFolder templates)
        : this(templates, new TemplateBounds())
    {
    }

    /// <summary>The templates in use.</summary>
    public TemplateFolder Templates => templates;

    /// <summary>
    /// Renders one sheet. In HTML every value is written escaped unless it is a picture or marked with <c>raw</c>; in a template that ends in <c>.txt</c> every
    /// value is written on one line.
    /// </summary>
    /// <param name="templateName">Name of the template, such as <c>trip-sheet.html</c>.</param>
    /// <param name="model">Its values.</param>
    /// <returns>The page, or what is wrong in the template.</returns>
    public RenderResult Render(string templateName, SheetModel model)
    {
        if (Parsed(templateName) is not { } template)
            return Failed(MissingTemplate.Named(templates, templateName));
        if (template.HasErrors)
            return Failed([.. TemplateProblems.Of(template)]);
        using var clock = new WorkClock(bounds.Time);
        var context = new SheetContext(Parsed, templates, bounds, model) { CancellationToken = clock.Token, IsText = IsText(templateName) };
        try
        {
            return new RenderResult { Html = template.Render(context) };
        }
        catch (PartialBroken broken)
        {
            return Failed([.. broken.Problems]);
        }
        catch (ScriptRuntimeException wrong)
        {
            return Failed(wrong.InnerException is PartialBroken inside ? [.. inside.Problems] : [TemplateProblems.Of(wrong, bounds)]);
        }
    }

    /// <summary>
    /// Renders one sheet to find what is wrong in its templates: a name that does not exist is noted and counts as nothing, and the page can be led back to the
    /// lines that wrote it.
    /// </summary>
    /// <param name="templateName">Name of the template.</param>
    /// <param name="model">Its values.</param>
    public TracedPage Trace(string templateName, SheetModel model)
    {
        if (Marked(templateName) is not { } template)
            return new TracedPage("", [], [MissingTemplate.Named(templates, templateName)]);
        if (template.HasErrors)
            return new TracedPage("", [], [.. TemplateProblems.Of(template)]);
        using var clock = new WorkClock(bounds.Time);
        var noted = new List<TemplateProblem>();
        var context = new SheetContext(Marked, templates, bounds, model, noted) { CancellationToken = clock.Token, IsText = IsText(templateName) };
        try
        {
            var (html, places) = LineMarks.OutOf(template.Render(context));
            return new TracedPage(html, places, [.. noted.Concat(context.WithoutWords).Distinct()]);
        }
        catch (PartialBroken broken)
        {
            noted.AddRange(broken.Problems);
        }
        catch (ScriptRuntimeException wrong) when (wrong.InnerException is PartialBroken inside)
        {
            noted.AddRange(inside.Problems);
        }
        catch (ScriptRuntimeException wrong)
        {
            // What stops the page after a name that does not exist may follow from it alone.
            if (noted.Count == 0)
                noted.Add(TemplateProblems.Of(wrong, bounds));
        }
        return new TracedPage("", [], [.. noted.Distinct()]);
    }

    /// <summary>What cannot be understood in a template as text; empty where all can, and for a name that does not exist.</summary>
    /// <param name="name">Name of the template or partial.</param>
    public ImmutableArray<TemplateProblem> Syntax(string name) => Parsed(name) is { HasErrors: true } broken ? [.. TemplateProblems.Of(broken)] : [];

    private Template? Parsed(string name) =>
        templates.Text(name) is { } text ? _parsed.GetOrAdd(name, key => Template.Parse(text, key)) : null;

    private Template? Marked(string name) =>
        templates.Text(name) is { } text ? _marked.GetOrAdd(name, key => LineMarks.Into(Template.Parse(text, key), key)) : null;

    /// <summary>Whether a traced page came to a template, also to one that writes nothing.</summary>
    /// <param name="name">Its name.</param>
    internal bool HasTraced(string name) => _marked.ContainsKey(name);

    private static bool IsText(string templateName) => templateName.EndsWith(PlainText, StringComparison.OrdinalIgnoreCase);

    private static RenderResult Failed(params ImmutableArray<TemplateProblem> problems) => new() { Html = "", Problems = problems };
}
