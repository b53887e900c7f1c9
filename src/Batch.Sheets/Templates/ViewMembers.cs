using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Reflection;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <summary>The values of a view type, by their names in templates.</summary>
internal static class ViewMembers
{
    private static readonly ConcurrentDictionary<Type, FrozenDictionary<string, ViewMember>> Known = new();

    public static FrozenDictionary<string, ViewMember> Of(Type type) => Known.GetOrAdd(type, Read);

    private static FrozenDictionary<string, ViewMember> Read(Type type) => type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Select(property => (Property: property, Said: property.GetCustomAttribute<ValueAttribute>()))
        .Where(pair => pair.Said is not null)
        .Select(pair => new ViewMember(StandardMemberRenamer.Rename(pair.Property), pair.Property, pair.Said?.Text ?? ""))
        .ToFrozenDictionary(member => member.Name, StringComparer.Ordinal);
}
