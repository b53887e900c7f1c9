namespace Batch.Sheets.Templates;

/// <summary>A template that is asked for and does not exist.</summary>
internal static class MissingTemplate
{
    public static TemplateProblem Named(TemplateFolder templates, string name) => At(templates, name, name, 0, 0);

    public static TemplateProblem At(TemplateFolder templates, string name, string file, int line, int column)
    {
        var near = NearWords.Nearest(name, templates.Names, 1) is [var nearest, ..] ? nearest : "";
        return new TemplateProblem(file, line, column, $"There is no template `{name}`" + (near.Length == 0 ? "." : $"; did you mean `{near}`?"), near);
    }
}
