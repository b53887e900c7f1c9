using Batch.Paper.Fonts;

namespace Batch.Paper;

/// <summary>A finished PDF.</summary>
/// <param name="Pdf">The bytes of the file; the same input always gives the same bytes, unless a password is set.</param>
/// <param name="Pages">Number of pages, at least 1.</param>
/// <param name="Unsupported">What the document asks for and did not get, in source order.</param>
public sealed record PrintedDocument(byte[] Pdf, int Pages, ImmutableArray<Unsupported> Unsupported)
{
    /// <summary>CSS <c>@font-face</c> rules that hold the faces of the print, cut down to its letters and to printable ASCII, under the family <c>Sheet Sans</c>; a browser then shows the document in them without a file beside it. Empty unless asked for.</summary>
    public string Faces { get; init; } = "";

    /// <summary>The document with the faces of its print in its head, as a browser shows it anywhere.</summary>
    /// <param name="html">The document that was printed.</param>
    public string Shown(string html)
    {
        ArgumentNullException.ThrowIfNull(html);
        return WebFaces.In(html, Faces);
    }

    /// <summary>Page, 1 for the first, on which each element with an id begins; of elements with the same id the first.</summary>
    public ImmutableDictionary<string, int> Places { get; init; } = ImmutableDictionary<string, int>.Empty;
}
