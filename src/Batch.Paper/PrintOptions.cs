namespace Batch.Paper;

/// <summary>What a print needs beside the HTML.</summary>
public sealed record PrintOptions
{
    /// <summary>Bytes (PNG or JPEG) for the `src` of an `img`; null when there are none. Without this only `data:` sources are shown.</summary>
    public Func<string, byte[]?>? Images { get; init; }

    /// <summary>Date written into the PDF. Fixed by default, so that the bytes do not depend on the clock.</summary>
    public DateTimeOffset MadeAt { get; init; } = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>`A4` or `Letter`, over the document's own `@page` size; null leaves it to the document (A4 when it says nothing).</summary>
    public string? PageSize { get; init; }

    /// <summary>Password needed to open the file (AES, 256 bit); null for an open file. An encrypted file differs from run to run.</summary>
    public string? Password { get; init; }

    /// <summary>Whether the faces used are wanted for browsers too, as <see cref="PrintedDocument.Faces"/>.</summary>
    public bool WithFaces { get; init; }

    /// <summary>Stops the print between stages and pages.</summary>
    public CancellationToken CancellationToken { get; init; }
}
