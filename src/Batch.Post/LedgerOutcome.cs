namespace Batch.Post;

/// <summary>How far a packet came on its way.</summary>
public enum LedgerOutcome
{
    /// <summary>It was meant to be sent; the server never had the end of it, so it did not go.</summary>
    Begun,

    /// <summary>The server was given its end and its answer is not known: it may have gone.</summary>
    Unknown,

    /// <summary>The server took it, or a person noted it as sent by hand.</summary>
    Issued,

    /// <summary>The server refused it.</summary>
    Refused,
}
