namespace Batch.Sheets.Templates;

/// <summary>
/// Stops a rendering that takes too long: by the clock and by the work that the program did meanwhile, so that a sheet is not lost because the machine was busy
/// with other things or the program stood still.
/// </summary>
internal sealed class WorkClock : IDisposable
{
    private readonly Lock _gate = new();
    private readonly CancellationTokenSource _stop = new();
    private readonly Func<TimeSpan> _work;
    private readonly TimeSpan _mostWork;
    private readonly Timer _timer;
    private bool _isOver;

    /// <summary>Starts it.</summary>
    /// <param name="time">The longest time; of processor time as much for each processor, because other sheets are made meanwhile.</param>
    public WorkClock(TimeSpan time)
        : this(time, static () => Environment.CpuUsage.TotalTime)
    {
    }

    /// <summary>Starts one that reads the work elsewhere.</summary>
    /// <param name="time">The longest time.</param>
    /// <param name="work">Processor time of the program so far.</param>
    public WorkClock(TimeSpan time, Func<TimeSpan> work)
    {
        _work = work;
        _mostWork = work() + (time * Environment.ProcessorCount);
        _timer = new Timer(_ => Look(), null, time, time / 4);
    }

    /// <summary>Cancelled when the time is over.</summary>
    public CancellationToken Token => _stop.Token;

    /// <summary>Stops looking.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            _isOver = true;
            _timer.Dispose();
            _stop.Dispose();
        }
    }

    private void Look()
    {
        lock (_gate)
        {
            if (!_isOver && _work() >= _mostWork) _stop.Cancel();
        }
    }
}
