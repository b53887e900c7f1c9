using System.Runtime.InteropServices;

namespace Batch.Paper.Paint;

/// <summary>A rectangle in px from the top left.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Rect(double X, double Y, double Width, double Height);
