namespace Batch.SampleMaker.Week;

/// <summary>Passengers who fly the same legs of a trip.</summary>
/// <param name="Legs">The legs as the Manifest sheet says them.</param>
/// <param name="People">One word a person: M man, W woman, A adult, C child, I infant; then a
/// weight [lb] where it matters; then <c>@</c> and a station with <c>_</c> for the blank.</param>
/// <param name="BagsLb">Weight of each one's bags [lb]; null: as it comes.</param>
public sealed record Party(string Legs, string People, int? BagsLb = null);
