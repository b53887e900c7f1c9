namespace Batch.Cli.Pipeline;

/// <summary>How far a run has come.</summary>
/// <param name="Stage">What is being done, such as <c>planning</c>.</param>
/// <param name="Done">Pieces done.</param>
/// <param name="Total">Pieces in all; 0 where not known.</param>
public readonly record struct RunProgress(string Stage, int Done, int Total);
