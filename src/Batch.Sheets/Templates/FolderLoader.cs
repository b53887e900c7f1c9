using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <summary>Names partials for <c>include</c>. The text itself comes from the template folder, parsed once; nothing is read from disk here.</summary>
internal sealed class FolderLoader : ITemplateLoader
{
    public string GetPath(TemplateContext context, SourceSpan callerSpan, string templateName) => templateName;

    public string Load(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
        throw new NotSupportedException("Partials come parsed from the template folder.");

    public ValueTask<string?> LoadAsync(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
        throw new NotSupportedException("Partials come parsed from the template folder.");
}
