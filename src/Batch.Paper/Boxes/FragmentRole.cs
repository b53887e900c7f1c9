namespace Batch.Paper.Boxes;

/// <summary>How a fragment's children lie: one below the other, side by side, or none that could be parted.</summary>
internal enum FragmentRole { Flow, Parallel, Line, Whole }
