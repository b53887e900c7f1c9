namespace Batch.Books;

/// <summary>
/// An input that cannot be used at all: a path that does not exist, a file that is not a workbook, no Legs sheet anywhere. A bad cell never throws.
/// </summary>
public sealed class BookException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="message">What is wrong and what to do, for the person at the keyboard.</param>
    public BookException(string message)
        : base(message)
    {
    }

    /// <summary>Makes the exception.</summary>
    /// <param name="message">What is wrong and what to do, for the person at the keyboard.</param>
    /// <param name="inner">What the library said.</param>
    public BookException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Makes the exception without a message.</summary>
    public BookException()
    {
    }
}
