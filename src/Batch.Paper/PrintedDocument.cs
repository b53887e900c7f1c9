namespace Batch.Paper;

/// <summary>A finished PDF.</summary>
/// <param name="Pdf">The bytes of the file; the same input always gives the same bytes, unless a password is set.</param>
/// <param name="Pages">Number of pages, at least 1.</param>
/// <param name="Unsupported">What the document asks for and did not get, in source order.</param>
public sealed record PrintedDocument(byte[] Pdf, int Pages, ImmutableArray<Unsupported> Unsupported)
{
    /// <summary>Page, 1 for the first, on which each element with an id begins; of elements with the same id the first.</summary>
    public ImmutableDictionary<string, int> Places { get; init; } = ImmutableDictionary<string, int>.Empty;
}
