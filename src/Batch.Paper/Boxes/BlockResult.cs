namespace Batch.Paper.Boxes;

/// <summary>A laid-out block and the margins that stick out of it. <paramref name="Through"/>: nothing parts its top from its bottom margin.</summary>
internal readonly record struct BlockResult(Fragment Fragment, MarginStrut Top, MarginStrut Bottom, bool Through);
