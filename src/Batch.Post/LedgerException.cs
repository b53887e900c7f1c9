namespace Batch.Post;

/// <summary>The ledger cannot be used.</summary>
public sealed class LedgerException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="message">One sentence for the person at the terminal.</param>
    public LedgerException(string message)
        : base(message)
    {
    }

    /// <summary>Makes the exception with what caused it.</summary>
    /// <param name="message">One sentence for the person at the terminal.</param>
    /// <param name="inner">What caused it.</param>
    public LedgerException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Makes an exception without a message.</summary>
    public LedgerException()
    {
    }
}
