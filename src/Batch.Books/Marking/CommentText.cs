using System.Text;
using System.Xml.Linq;

namespace Batch.Books.Marking;

/// <summary>
/// The text of ours in a comment: between two lines by which it is known again, whoever has saved the book since and whatever was written around it.
/// </summary>
internal static class CommentText
{
    /// <summary>The line before it.</summary>
    public const string Begin = "tripbatch found here:";

    /// <summary>The line behind it.</summary>
    public const string End = "(end of tripbatch)";

    /// <summary>Most findings told in one comment; the Findings sheet holds all.</summary>
    private const int Most = 4;

    /// <summary>Most letters of one finding in a comment.</summary>
    private const int Longest = 900;

    /// <summary>The text for the findings of one cell.</summary>
    /// <param name="findings">What each says.</param>
    public static string Of(IReadOnlyList<string> findings)
    {
        var text = new StringBuilder(Begin);
        foreach (var finding in findings.Take(Most)) text.Append('\n')
            .Append(finding.Length <= Longest ? finding : finding[..(char.IsHighSurrogate(finding[Longest - 1]) ? Longest - 1 : Longest)] + "...");
        if (findings.Count > Most)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\nand {findings.Count - Most} more: see the sheet of findings");
        return text.Append('\n').Append(End).ToString();
    }

    /// <summary>Cuts the text of ours out of the runs of a comment.</summary>
    /// <param name="text">The element that holds the runs.</param>
    /// <returns>Whether there was any.</returns>
    public static bool CutOut(XElement text)
    {
        var pieces = text.Descendants().Where(element => element.Name.LocalName == "t" && element.Parent?.Name.LocalName is "r" or "text").ToArray();
        var whole = string.Concat(pieces.Select(piece => piece.Value));
        var begin = whole.IndexOf(Begin, StringComparison.Ordinal);
        if (begin < 0) return false;
        var end = whole.IndexOf(End, begin, StringComparison.Ordinal);
        end = end < 0 ? whole.Length : end + End.Length;
        while (begin > 0 && whole[begin - 1] is '\n' or '\r') begin--;
        var at = 0;
        foreach (var piece in pieces)
        {
            var (from, to) = (Math.Clamp(begin - at, 0, piece.Value.Length), Math.Clamp(end - at, 0, piece.Value.Length));
            at += piece.Value.Length;
            if (from == to) continue;
            piece.Value = piece.Value.Remove(from, to - from);
            if (piece.Value.Length == 0 && piece.Parent is { Name.LocalName: "r" } run) run.Remove();
        }

        return true;
    }

    /// <summary>Whether a comment says nothing.</summary>
    /// <param name="text">The element that holds the runs.</param>
    public static bool IsEmpty(XElement text) => string.IsNullOrWhiteSpace(text.Value);
}
