using System.IO.Compression;

namespace Batch.Books.Packages;

/// <summary>A workbook file as its parts, in the order of the archive. A part that is not replaced keeps its bytes.</summary>
internal sealed class Package
{
    /// <summary>Most bytes of one part, unpacked [B].</summary>
    public const long GreatestPart = Excel.PartReader.GreatestPart;

    /// <summary>Most bytes of all parts, unpacked [B].</summary>
    public const long GreatestWhole = 512L * 1024 * 1024;

    /// <summary>Most parts; a large workbook with pictures has some hundreds.</summary>
    public const int GreatestCount = 20_000;

    /// <summary>The time written for parts that are ours, the earliest an archive can hold: the same input gives the same bytes.</summary>
    private static readonly DateTimeOffset OwnTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly List<Part> _parts = [];
    private readonly Dictionary<string, int> _places = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Makes an empty package.</summary>
    public Package()
    {
    }

    /// <summary>Names of the parts in archive order.</summary>
    public IEnumerable<string> Names => _parts.Select(part => part.Name);

    /// <summary>Unpacks a workbook.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="name">Its name, for refusals.</param>
    /// <exception cref="BookException">It is not an archive, holds a part twice, or grows beyond all measure when unpacked.</exception>
    public static Package Read(byte[] bytes, string name)
    {
        var package = new Package();
        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            if (archive.Entries.Count > GreatestCount) throw new BookException($"{name} holds more parts than a workbook could need");
            var left = GreatestWhole;
            foreach (var entry in archive.Entries)
            {
                if (entry.FullName.EndsWith('/')) continue;
                var part = entry.FullName.Replace('\\', '/').TrimStart('/');
                if (package.Has(part)) throw new BookException($"{name} holds the part {part} twice; open it in a spreadsheet program and save it");
                using var stream = new Excel.LimitedStream(entry.Open(), Math.Min(GreatestPart, left), name);
                using var copy = new MemoryStream();
                stream.CopyTo(copy);
                left -= copy.Length;
                package.Add(new Part(part, copy.ToArray(), entry.LastWriteTime));
            }
        }
        catch (InvalidDataException thrown)
        {
            throw new BookException(
                $"{name} cannot be unpacked ({thrown.Message.TrimEnd('.')}); open it in a spreadsheet program and save it as .xlsx", thrown);
        }

        return package;
    }

    /// <summary>Whether there is a part of a name, case ignored.</summary>
    public bool Has(string name) => _places.ContainsKey(name);

    /// <summary>The bytes of a part; null where there is none.</summary>
    public byte[]? Find(string name) => _places.TryGetValue(name, out var place) ? _parts[place].Content : null;

    /// <summary>Replaces a part, or adds it at the end.</summary>
    /// <param name="name">Path in the archive.</param>
    /// <param name="content">Its bytes.</param>
    public void Put(string name, byte[] content)
    {
        if (!_places.TryGetValue(name, out var place)) Add(new Part(name, content, OwnTime));
        else if (!_parts[place].Content.AsSpan().SequenceEqual(content)) _parts[place] = _parts[place] with { Content = content };
    }

    /// <summary>A name that no part has: the stem with the first free number before the ending.</summary>
    /// <param name="stem">Such as <c>xl/comments</c>.</param>
    /// <param name="ending">Such as <c>.xml</c>.</param>
    public string FreeName(string stem, string ending)
    {
        for (var number = 1; ; number++)
        {
            var name = stem + number.ToString(System.Globalization.CultureInfo.InvariantCulture) + ending;
            if (!Has(name)) return name;
        }
    }

    /// <summary>The workbook file; the same parts give the same bytes.</summary>
    public byte[] Write()
    {
        using var buffer = new MemoryStream();
        using (var archive = new ZipArchive(buffer, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var part in _parts)
            {
                var entry = archive.CreateEntry(part.Name, CompressionLevel.Optimal);
                entry.LastWriteTime = part.Written.Year is >= 1980 and <= 2107 ? part.Written : OwnTime;
                using var stream = entry.Open();
                stream.Write(part.Content);
            }
        }

        return buffer.ToArray();
    }

    private void Add(Part part)
    {
        _places.Add(part.Name, _parts.Count);
        _parts.Add(part);
    }
}
