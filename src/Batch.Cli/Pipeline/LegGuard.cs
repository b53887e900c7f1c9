namespace Batch.Cli.Pipeline;

/// <summary>Runs the work on one leg or sheet; a fault of the program costs that leg or sheet, never the batch.</summary>
public sealed class LegGuard
{
    private readonly List<Fault> _faults = [];

    /// <summary>Faults so far, by subject.</summary>
    public ImmutableArray<Fault> Faults
    {
        get
        {
            lock (_faults) return [.. _faults.OrderBy(fault => fault.Subject, StringComparer.Ordinal)];
        }
    }

    /// <summary>The result of some work, or a substitute where the work broke down.</summary>
    /// <typeparam name="T">What the work gives.</typeparam>
    /// <param name="subject">Leg or sheet, for the message.</param>
    /// <param name="work">The work.</param>
    /// <param name="instead">The substitute for a fault.</param>
    public T Run<T>(string subject, Func<T> work, Func<Exception, T> instead)
    {
        try
        {
            return work();
        }
        catch (OperationCanceledException)
        {
            throw;
        }
#pragma warning disable CA1031 // One of the two places that catch everything: a fault in one leg or sheet must not cost the others.
        catch (Exception error)
#pragma warning restore CA1031
        {
            lock (_faults) _faults.Add(new Fault(subject, error));
            return instead(error);
        }
    }
}
