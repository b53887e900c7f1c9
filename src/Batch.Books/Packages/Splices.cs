using System.Text;

namespace Batch.Books.Packages;

/// <summary>Changes to a text, collected by place and made at once.</summary>
internal sealed class Splices
{
    private readonly List<(int Start, int Length, string Text)> _all = [];

    /// <summary>Whether nothing changes.</summary>
    public bool IsEmpty => _all.Count == 0;

    /// <summary>Puts text at a place; texts put at the same place keep their order, and stand before what is replaced from there on.</summary>
    public void Insert(int at, string text) => _all.Add((at, 0, text));

    /// <summary>Replaces a range by text.</summary>
    public void Replace(int start, int end, string text) => _all.Add((start, end - start, text));

    /// <summary>The changed text.</summary>
    /// <param name="text">The text as it was.</param>
    public string Apply(string text)
    {
        if (_all.Count == 0) return text;
        var changed = new StringBuilder(text.Length + _all.Sum(splice => splice.Text.Length));
        var at = 0;
        foreach (var (start, length, put) in _all.OrderBy(splice => splice.Start).ThenBy(splice => splice.Length > 0))
        {
            changed.Append(text, at, start - at).Append(put);
            at = start + length;
        }

        return changed.Append(text, at, text.Length - at).ToString();
    }
}
