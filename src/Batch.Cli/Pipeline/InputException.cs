namespace Batch.Cli.Pipeline;

/// <summary>The input or the command line cannot be used; the program ends with <see cref="ExitStatus.BadInput"/>.</summary>
public sealed class InputException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="message">One sentence for the person at the terminal.</param>
    public InputException(string message)
        : base(message)
    {
    }

    /// <summary>Makes the exception with what caused it.</summary>
    /// <param name="message">One sentence for the person at the terminal.</param>
    /// <param name="inner">What caused it.</param>
    public InputException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Makes an exception without a message.</summary>
    public InputException()
    {
    }
}
