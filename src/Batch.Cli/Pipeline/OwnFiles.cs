using System.Text;

namespace Batch.Cli.Pipeline;

/// <summary>
/// Which files in the folder of a run are ours: those that the run noted, and the drafts that sending it wrote. Everything else is the user's own.
/// </summary>
/// <param name="folder">The folder.</param>
internal sealed class OwnFiles(string folder)
{
    /// <summary>The list of what a run wrote; its name begins with a full stop, so that it is not in the way.</summary>
    public const string ListName = ".tripbatch-files";

    private const string Drafts = "drafts";

    /// <summary>What runs wrote before they kept a list.</summary>
    private static readonly string[] BeforeLists =
        ["index.html", "run.json", "findings.csv", "register.xlsx", "checked.xlsx", "checked.xlsm", "sheets", "packets", "loads", "calendar"];

    private readonly HashSet<string> _names = Listed(Path.Combine(folder, ListName));

    /// <summary>Writes the list.</summary>
    /// <param name="folder">Folder of the run.</param>
    /// <param name="names">Paths inside the folder, with forward slashes.</param>
    public static void Note(string folder, IEnumerable<string> names) => File.WriteAllText(Path.Combine(folder, ListName),
        string.Concat(names.Order(StringComparer.Ordinal).Select(name => name + "\n")), new UTF8Encoding(false));

    /// <summary>What is the user's own: files by their path, folders and links whole where nothing in them is ours.</summary>
    public IEnumerable<string> Others() => OthersIn("");

    private IEnumerable<string> OthersIn(string below)
    {
        foreach (var entry in new DirectoryInfo(Path.Combine(folder, below)).EnumerateFileSystemInfos())
        {
            var name = below.Length == 0 ? entry.Name : below + "/" + entry.Name;
            if (entry is DirectoryInfo { LinkTarget: null } && IsPartOurs(name))
            {
                foreach (var other in OthersIn(name)) yield return other;
            }
            else if (!IsOurs(name))
            {
                yield return name;
            }
        }
    }

    private bool IsPartOurs(string name) => name == Drafts || _names.Any(own => own.StartsWith(name + "/", StringComparison.Ordinal));

    private bool IsOurs(string name) => name == ListName || _names.Contains(name) || (name.StartsWith(Drafts + "/", StringComparison.Ordinal)
        && name.EndsWith(".eml", StringComparison.OrdinalIgnoreCase));

    private static HashSet<string> Listed(string list) => File.Exists(list) ? [.. File.ReadAllLines(list)] : [.. BeforeLists];
}
