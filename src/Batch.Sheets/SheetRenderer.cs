using System.Collections.Concurrent;
using Batch.Sheets.Templates;
using Scriban;
using Scriban.Syntax;

namespace Batch.Sheets;

/// <summary>Renders templates. A template sees the values of its model and the functions of the house, nothing else: no file, network, process, clock or random value. Safe to share between threads.</summary>
/// <param name="templates">The templates.</param>
/// <param name="bounds">How much a template may take.</param>
public sealed class SheetRenderer(TemplateFolder templates, TemplateBounds bounds)
{
    private const string PlainText = ".txt";
    private readonly ConcurrentDictionary<string, Template> _parsed = new(StringComparer.Ordinal);

    /// <summary>A renderer with the usual bounds.</summary>
    /// <param name="templates">The templates.</param>
    public SheetRenderer(TemplateFolder templates)
        : this(templates, new TemplateBounds())
    {
    }

    /// <summary>The templates in use.</summary>
    public TemplateFolder Templates => templates;

    /// <summary>Renders one sheet. In HTML every value is written escaped unless it is a picture or marked with <c>raw</c>; in a template that ends in <c>.txt</c> every value is written on one line.</summary>
    /// <param name="templateName">Name of the template, such as <c>trip-sheet.html</c>.</param>
    /// <param name="model">Its values.</param>
    /// <returns>The page, or what is wrong in the template.</returns>
    public RenderResult Render(string templateName, SheetModel model)
    {
        if (Parsed(templateName) is not { } template)
            return Failed(MissingTemplate.Named(templates, templateName));
        if (template.HasErrors)
            return Failed([.. TemplateProblems.Of(template)]);
        using var clock = new CancellationTokenSource(bounds.Time);
        var context = new SheetContext(this, bounds, model) { CancellationToken = clock.Token, IsText = templateName.EndsWith(PlainText, StringComparison.OrdinalIgnoreCase) };
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

    /// <summary>The parsed template of a name, with its errors; null when there is none.</summary>
    internal Template? Parsed(string name) =>
        templates.Text(name) is { } text ? _parsed.GetOrAdd(name, key => Template.Parse(text, key)) : null;

    private static RenderResult Failed(params ImmutableArray<TemplateProblem> problems) => new() { Html = "", Problems = problems };
}
