using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <summary>Lets a template read the marked values of a view and nothing else; an unknown name is an error that names the nearest.</summary>
internal sealed class ViewAccessor : IObjectAccessor
{
    public static ViewAccessor Instance { get; } = new();

    public bool HasIndexer => false;

    public Type IndexType => typeof(object);

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => ViewMembers.Of(target.GetType()).Count;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) =>
        ViewMembers.Of(target.GetType()).Keys.Order(StringComparer.Ordinal);

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => ViewMembers.Of(target.GetType()).ContainsKey(member);

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        var members = ViewMembers.Of(target.GetType());
        if (members.TryGetValue(member, out var found))
        {
            value = found.Read(target);
            return true;
        }
        var unknown = members.Count == 0
            ? new ValueError(span, $"A single value has no parts, so no `{member}`.")
            : ValueError.Unknown(span, $"There is no value `{member}` here", member, members.Keys);
        value = null;
        return context is SheetContext sheet && sheet.Notes(unknown) ? true : throw unknown;
    }

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) =>
        throw new ValueError(span, $"`{member}` cannot be changed by a template.");

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object? value) =>
        throw new ValueError(span, "This value is not a list.");

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) =>
        throw new ValueError(span, "This value cannot be changed by a template.");
}
