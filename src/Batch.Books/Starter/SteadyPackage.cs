using System.Text;
using System.Text.RegularExpressions;
using Batch.Books.Packages;

namespace Batch.Books.Starter;

/// <summary>Takes out of a workbook what the library that wrote it took from the clock or from chance: times, a random part name, random ids.</summary>
internal static partial class SteadyPackage
{
    private const string Made = "2026-01-01T00:00:00Z";
    private const string Properties = "docProps/core.psmdcp";

    /// <summary>The workbook; the same content gives the same bytes.</summary>
    /// <param name="workbook">As the library wrote it.</param>
    public static byte[] Of(byte[] workbook)
    {
        var written = Package.Read(workbook, "the starter book");
        var random = written.Names.First(name => name.EndsWith(".psmdcp", StringComparison.Ordinal));
        var steady = new Package();
        foreach (var name in written.Names.OrderBy(name => name == "[Content_Types].xml" ? "" : name == random ? Properties : name, StringComparer.Ordinal))
        {
            var content = written.Find(name) ?? [];
            if (name == random || name == "_rels/.rels") content = Encoding.UTF8.GetBytes(Text(Encoding.UTF8.GetString(content), random));
            steady.Put(name == random ? Properties : name, content);
        }

        return steady.Write();
    }

    private static string Text(string text, string random)
    {
        var number = 0;
        text = text.Replace(random, Properties, StringComparison.Ordinal);
        text = RandomId().Replace(text, _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Id=\"rIdS{++number}\""));
        return Stamp().Replace(text, "${open}" + Made + "${close}");
    }

    [GeneratedRegex("\\bId=\"R[0-9a-f]{8,}\"", RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex RandomId();

    [GeneratedRegex("(?<open><dcterms:(created|modified)[^>]*>)[^<]*(?<close></dcterms:)", RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex Stamp();
}
