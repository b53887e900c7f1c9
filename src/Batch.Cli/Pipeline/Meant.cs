namespace Batch.Cli.Pipeline;

/// <summary>What a name that is not known was probably meant to be.</summary>
internal static class Meant
{
    /// <summary>
    /// The question to stand behind the complaint, with a space before it, such as <c> Did you mean T101 or T102?</c>; empty where nothing is near.
    /// </summary>
    /// <param name="name">The name as given.</param>
    /// <param name="known">The names there are.</param>
    public static string Question(string name, IEnumerable<string> known)
    {
        var near = NearWords.Nearest(name, known);
        return near.IsEmpty ? "" : $" Did you mean {string.Join(" or ", near)}?";
    }
}
