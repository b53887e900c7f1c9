namespace Batch.Flight.Plan;

/// <summary>Why a profile cannot be flown on.</summary>
/// <param name="Why">One sentence.</param>
/// <param name="Where">Place on the route; empty where it has none.</param>
internal sealed record ProfileTrouble(string Why, string Where);
