using Batch.Books.Headers;
using Batch.Flight.Fleet;

namespace Batch.Books.Links;

/// <summary>Resolves codes of pilots without ever repeating what was written in the text: somebody may have typed a name.</summary>
internal static class CrewLinks
{
    /// <summary>The pilot a cell refers to; complains at the cell where there is none.</summary>
    public static CrewMember? Resolve(Register<CrewMember> crew, Row row, Column column, string code)
    {
        if (code.Length == 0) return null;
        if (crew.Find(code) is { } pilot) return pilot;
        if (Undecided.Complains(row, column, code, "a code of Crew")) return null;
        var named = crew.Names.Where(name => string.Equals(crew.Find(name)?.Name, code, StringComparison.OrdinalIgnoreCase)).ToImmutableArray();
        var near = named.Length > 0 ? named : Likely.Words(code, crew.Names);
        if (near.IsEmpty) near = Alike(crew, code);
        row.Fail(column, $"{column.Name} is not a code of Crew" + Likely.Question(near), near.Length > 0 ? string.Join(", ", near) : "a code of Crew");
        return null;
    }

    // The codes of those whose name is nearest, or who have a name of that one word, such as the family name alone.
    private static ImmutableArray<string> Alike(Register<CrewMember> crew, string written)
    {
        var names = crew.Names.ToLookup(code => crew.Find(code)?.Name ?? "", StringComparer.OrdinalIgnoreCase);
        var near = Likely.Words(written, names.Select(group => group.Key));
        if (near.IsEmpty)
            near = [.. names.Select(group => group.Key).Where(name => name.Split(' ').Contains(written, StringComparer.OrdinalIgnoreCase)).Take(3)];
        return [.. near.SelectMany(name => names[name])];
    }
}
