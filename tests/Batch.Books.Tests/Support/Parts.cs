using System.IO.Compression;
using System.Text;

namespace Batch.Books.Tests.Support;

/// <summary>The parts of a workbook, unpacked for comparing.</summary>
internal sealed class Parts
{
    private readonly SortedDictionary<string, byte[]> _parts = new(StringComparer.Ordinal);

    public Parts(byte[] workbook)
    {
        using var archive = new ZipArchive(new MemoryStream(workbook));
        foreach (var entry in archive.Entries)
        {
            using var copy = new MemoryStream();
            using var stream = entry.Open();
            stream.CopyTo(copy);
            _parts.Add(entry.FullName, copy.ToArray());
        }
    }

    public IEnumerable<string> Names => _parts.Keys;

    public bool Has(string name) => _parts.ContainsKey(name);

    public byte[] Bytes(string name) => _parts[name];

    public string Text(string name) => Encoding.UTF8.GetString(_parts[name]).TrimStart('\uFEFF');

    /// <summary>The workbook with its parts changed one by one; null takes a part out.</summary>
    public static byte[] Changed(byte[] workbook, Func<string, string, string?> change, params (string Name, string Text)[] added)
    {
        using var buffer = new MemoryStream();
        using (var archive = new ZipArchive(buffer, ZipArchiveMode.Create, leaveOpen: true))
        {
            var parts = new Parts(workbook);
            foreach (var name in parts.Names)
            {
                var isText = name.EndsWith(".xml", StringComparison.Ordinal)
                    || name.EndsWith(".rels", StringComparison.Ordinal)
                    || name.EndsWith(".vml", StringComparison.Ordinal);
                var text = isText ? change(name, parts.Text(name)) : "";
                if (text is null) continue;
                Put(archive, name, isText ? Encoding.UTF8.GetBytes(text) : parts.Bytes(name));
            }

            foreach (var (name, text) in added) Put(archive, name, Encoding.UTF8.GetBytes(text));
        }

        return buffer.ToArray();
    }

    private static void Put(ZipArchive archive, string name, byte[] content)
    {
        using var stream = archive.CreateEntry(name).Open();
        stream.Write(content);
    }
}
