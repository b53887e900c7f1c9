namespace Batch.Cli.Pipeline;

/// <summary>A fault of the program while it worked on one leg or sheet; the rest of the batch went on.</summary>
/// <param name="Subject">Leg or sheet.</param>
/// <param name="Error">What happened.</param>
public sealed record Fault(string Subject, Exception Error);
