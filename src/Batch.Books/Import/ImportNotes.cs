namespace Batch.Books.Import;

/// <summary>What an import has to say, collected on the way.</summary>
internal sealed class ImportNotes
{
    private const int Most = 200;

    private readonly List<string> _leftOut = [];
    private readonly List<string> _notes = [];
    private int _more;

    /// <summary>Rows left out.</summary>
    public ImmutableArray<string> LeftOut =>
        _more == 0 ? [.. _leftOut] : [.. _leftOut, $"and {_more.ToString(System.Globalization.CultureInfo.InvariantCulture)} rows more"];

    /// <summary>What else the user should know.</summary>
    public ImmutableArray<string> Notes
    {
        get
        {
            var all = _notes.Distinct(StringComparer.Ordinal).ToArray();
            return all.Length <= Most
                ? [.. all]
                : [.. all.Take(Most), $"and {(all.Length - Most).ToString(System.Globalization.CultureInfo.InvariantCulture)} notes more"];
        }
    }

    /// <summary>Says that a row is left out.</summary>
    /// <param name="line">File and line.</param>
    /// <param name="why">Why.</param>
    public void LeaveOut(string line, string why)
    {
        if (_leftOut.Count < Most) _leftOut.Add($"{line}: {why}");
        else _more++;
    }

    /// <summary>Says something.</summary>
    public void Say(string note) => _notes.Add(note);
}
