using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Batch.SampleMaker.Books;

/// <summary>
/// Makes the bytes of an Office package depend on its content alone: fixed entry times and order, no random part names or relationship ids, fixed properties.
/// </summary>
public static partial class FixedPackage
{
    private const string Made = "2026-12-03T12:00:00Z";

    private static readonly DateTimeOffset EntryTime = new(2026, 12, 3, 12, 0, 0, TimeSpan.Zero);

    /// <summary>The same package with everything fixed that a writer takes from the clock or from chance.</summary>
    public static byte[] Rewrite(byte[] package)
    {
        var parts = Read(package);
        var names = Renamed(parts.Keys);
        var ids = RelationshipIds(parts);
        using var fixedBytes = new MemoryStream();
        using (var zip = new ZipArchive(fixedBytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts.OrderBy(part => names[part.Key] == "[Content_Types].xml" ? "" : names[part.Key], StringComparer.Ordinal))
            {
                var entry = zip.CreateEntry(names[name], CompressionLevel.Optimal);
                entry.LastWriteTime = EntryTime;
                using var stream = entry.Open();
                stream.Write(Encoding.UTF8.GetBytes(Fixed(content, names, ids)));
            }
        }

        return fixedBytes.ToArray();
    }

    private static SortedDictionary<string, string> Read(byte[] package)
    {
        using var zip = new ZipArchive(new MemoryStream(package), ZipArchiveMode.Read);
        var parts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in zip.Entries)
        {
            using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
            parts.Add(entry.FullName, reader.ReadToEnd());
        }

        return parts;
    }

    private static Dictionary<string, string> Renamed(IEnumerable<string> names) =>
        names.ToDictionary(name => name, name => name.EndsWith(".psmdcp", StringComparison.Ordinal) ? "docProps/core.psmdcp" : name);

    private static Dictionary<string, string> RelationshipIds(SortedDictionary<string, string> parts) =>
        parts.Where(part => part.Key.EndsWith(".rels", StringComparison.Ordinal))
            .SelectMany(part => RandomId().Matches(part.Value).Select(match => match.Groups["id"].Value))
            .Distinct(StringComparer.Ordinal)
            .Select((id, index) => (id, index))
            .ToDictionary(pair => pair.id, pair => "rIdF" + pair.index.ToString(System.Globalization.CultureInfo.InvariantCulture));

    private static string Fixed(string content, Dictionary<string, string> names, Dictionary<string, string> ids)
    {
        foreach (var (old, name) in names.Where(pair => pair.Key != pair.Value))
        {
            content = content.Replace(old, name, StringComparison.Ordinal);
        }

        foreach (var (old, id) in ids)
        {
            content = content.Replace('"' + old + '"', '"' + id + '"', StringComparison.Ordinal);
        }

        return Stamp().Replace(content, "${open}" + Made + "${close}");
    }

    [GeneratedRegex("\\bId=\"(?<id>R[0-9a-f]{8,})\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex RandomId();

    [GeneratedRegex("(?<open><dcterms:(created|modified)[^>]*>)[^<]*(?<close></dcterms:)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Stamp();
}
