using System.Text;

namespace Batch.Sheets;

/// <summary>Text files that travel inside the program.</summary>
internal static class EmbeddedText
{
    /// <summary>The text of an embedded file.</summary>
    /// <param name="name">Its name with <c>/</c> between folders.</param>
    /// <exception cref="InvalidOperationException">No such file was built in: a fault of the build.</exception>
    public static string Read(string name)
    {
        using var stream = typeof(EmbeddedText).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"No file {name} is built in.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>Names of the embedded files under a folder, in order, without the folder.</summary>
    /// <param name="folder">Folder with a <c>/</c> at its end.</param>
    public static ImmutableArray<string> Names(string folder) =>
        [.. typeof(EmbeddedText).Assembly.GetManifestResourceNames().Select(name => name.Replace('\\', '/'))
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Select(name => name[folder.Length..]).Order(StringComparer.Ordinal)];
}
