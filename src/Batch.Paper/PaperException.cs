namespace Batch.Paper;

/// <summary>A document that cannot be printed: a box that fits no page, or text beyond the limits of size and depth.</summary>
public sealed class PaperException : Exception
{
    /// <summary>Names the place and the reason.</summary>
    /// <param name="tag">Element the printer stopped at, such as `img`.</param>
    /// <param name="line">Line of that element in the HTML, from 1.</param>
    /// <param name="reason">Why it cannot be printed, from the element outwards.</param>
    public PaperException(string tag, int line, string reason)
        : base("<" + tag + "> at line " + line.ToString(System.Globalization.CultureInfo.InvariantCulture) + ": " + reason)
    {
        Tag = tag;
        Line = line;
        Reason = reason;
    }

    /// <summary>Element the printer stopped at.</summary>
    public string Tag { get; }

    /// <summary>Line of the element in the HTML, from 1.</summary>
    public int Line { get; }

    /// <summary>Why it cannot be printed.</summary>
    public string Reason { get; }
}
