namespace Batch.Paper.Pages;

/// <summary>A place where the endless column may be cut: what lies above ends at <paramref name="End"/>, the next page begins at <paramref name="Next"/>. Penalty 0 is free of objections.</summary>
internal readonly record struct BreakPoint(double End, double Next, int Penalty, bool Forced);
