using Batch.Checks;

namespace Batch.Cli.Pipeline;

/// <summary>A week read, planned and checked.</summary>
/// <param name="Week">The week.</param>
/// <param name="Faults">Faults of the program on the way.</param>
public sealed record WeekResult(CheckedWeek Week, ImmutableArray<Fault> Faults);
