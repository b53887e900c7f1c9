using System.Collections.Frozen;
using System.Text;

namespace Batch.Sheets;

/// <summary>The templates in use: those that travel inside the program, each replaced by a file of the same name in a folder of the user.</summary>
public sealed class TemplateFolder
{
    private const string Embedded = "templates/";
    private const long LargestFile = 1_000_000;
    private static readonly ImmutableArray<string> Kinds = [".html", ".css", ".js", ".svg", ".txt"];
    private readonly FrozenDictionary<string, string> _texts;
    private readonly FrozenDictionary<string, string> _own;

    private TemplateFolder(Dictionary<string, string> texts, IReadOnlyDictionary<string, string> own)
    {
        _own = own.ToFrozenDictionary(StringComparer.Ordinal);
        foreach (var (name, text) in own) texts[name] = text;
        _texts = texts.ToFrozenDictionary(StringComparer.Ordinal);
        Names = [.. _texts.Keys.Order(StringComparer.Ordinal)];
    }

    /// <summary>
    /// Examples of templates in other units and another language, as paths such as <c>examples/german/_fuel.html</c>; each folder under <c>examples</c> is one
    /// that <see cref="Over"/> takes.
    /// </summary>
    public static ImmutableArray<string> Examples { get; } = [.. EmbeddedText.Names(Embedded).Where(name => name.Contains('/', StringComparison.Ordinal))];

    /// <summary>The templates that travel inside the program, in English and pounds.</summary>
    public static TemplateFolder Shipped { get; } = new(ShippedTexts(""), FrozenDictionary<string, string>.Empty);

    /// <summary>The text of an example.</summary>
    /// <param name="path">One of <see cref="Examples"/>.</param>
    public static string ExampleText(string path) => EmbeddedText.Read(Embedded + path);

    /// <summary>Names of all templates and partials, in order; a partial begins with <c>_</c>.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>The shipped templates with those of a folder in their place; the folder may add templates and partials.</summary>
    /// <param name="folder">The folder; its files ending in html, css, js, svg or txt are read, sub-folders are not.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    /// <exception cref="IOException">A file cannot be read, is larger than one megabyte, or is empty in the place of a shipped sheet.</exception>
    public static TemplateFolder Over(string folder)
    {
        var own = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in Directory.EnumerateFiles(folder).Where(IsTemplate).Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileName(path);
            var text = Read(path);
            if (string.IsNullOrWhiteSpace(text) && name[0] != '_' && Shipped.Names.Contains(name))
                throw new IOException($"{path} is empty, or is no file (a pipe or a device); take it away to use the one that is shipped.");
            own[name] = text.ReplaceLineEndings("\n");
        }

        return new TemplateFolder(ShippedTexts(""), own);
    }

    /// <summary>
    /// The same with the shipped templates that an operator reads below the user's own: in kilograms for whoever thinks in them, and then in German too. Every
    /// other language, and German in pounds, has none.
    /// </summary>
    /// <param name="unit">The operator's unit of weight.</param>
    /// <param name="language">The language that the operator asks for; empty for none.</param>
    public TemplateFolder For(WeightUnit unit, string language) => new(ShippedTexts(SheetLanguage.Set(unit, language)), _own);

    /// <summary>Whether a file in a folder is a template, by its name; hidden files, as editors leave them, are not.</summary>
    /// <param name="path">The file.</param>
    public static bool IsTemplate(string path) =>
        Path.GetFileName(path) is not ['.', ..] && Kinds.Contains(Path.GetExtension(path), StringComparer.OrdinalIgnoreCase);

    /// <summary>The shipped templates with others in their place, as texts; for tests and previews.</summary>
    /// <param name="texts">Texts by name.</param>
    public static TemplateFolder With(IReadOnlyDictionary<string, string> texts) => new(ShippedTexts(""), texts);

    /// <summary>The text of a template; null when there is none of that name.</summary>
    /// <param name="name">Its name, such as <c>trip-sheet.html</c>.</param>
    public string? Text(string name) => _texts.GetValueOrDefault(name);

    /// <summary>Whether a template is the user's own.</summary>
    /// <param name="name">Its name.</param>
    public bool IsOwn(string name) => _own.ContainsKey(name);

    // A pipe has no length, and opening it would wait for whoever writes into it.
    private static string Read(string path)
    {
        var length = File.ResolveLinkTarget(path, returnFinalTarget: true) is FileInfo target ? target.Length : new FileInfo(path).Length;
        if (length > LargestFile) throw new IOException($"{path} is larger than one megabyte; a template that long is surely not meant.");
        return length == 0 ? "" : File.ReadAllText(path, Encoding.UTF8);
    }

    /// <summary>The shipped templates, with those of an example in their place.</summary>
    private static Dictionary<string, string> ShippedTexts(string example)
    {
        var texts = EmbeddedText.Names(Embedded)
            .Where(name => !name.Contains('/', StringComparison.Ordinal) && Kinds.Contains(Path.GetExtension(name), StringComparer.Ordinal))
            .ToDictionary(name => name, name => EmbeddedText.Read(Embedded + name), StringComparer.Ordinal);
        foreach (var path in Examples.Where(path => example.Length > 0 && path.StartsWith(example, StringComparison.Ordinal)))
            texts[path[example.Length..]] = ExampleText(path);
        return texts;
    }
}
