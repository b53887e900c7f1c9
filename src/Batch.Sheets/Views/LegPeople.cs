using Batch.Flight.Plan;

namespace Batch.Sheets.Views;

/// <summary>Who and what flies a leg, planned or not.</summary>
internal static class LegPeople
{
    /// <summary>Registration as in the book; empty where it could not be read.</summary>
    public static string Aircraft(LegPlan plan) => LegView.Names(plan) is var (read, broken) ? read?.Aircraft ?? broken?.Aircraft ?? "" : "";

    /// <summary>Codes of captain and second pilot as in the book, each once.</summary>
    public static ImmutableArray<string> Crew(LegPlan plan) => LegView.Names(plan) is var (read, broken)
        ? [.. new[] { read?.Captain ?? broken?.Captain ?? "", read?.SecondPilot ?? broken?.SecondPilot ?? "" }.Where(code => code.Length > 0)
            .Distinct(StringComparer.OrdinalIgnoreCase)]
        : [];
}
