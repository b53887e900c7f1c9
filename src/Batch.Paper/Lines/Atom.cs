using Batch.Paper.Boxes;
using Batch.Paper.Style;

namespace Batch.Paper.Lines;

/// <summary>An inline-block or picture in a line and the margins round it, px; not laid out yet while only widths are asked for.</summary>
internal sealed record Atom(Fragment? Fragment, Sides<double> Margin);
