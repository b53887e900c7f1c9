using System.Runtime.InteropServices;

namespace Batch.Paper.Paint;

/// <summary>A rectangle in px from the top left.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Rect(double X, double Y, double Width, double Height)
{
    /// <summary>The rectangle with its edges on whole px, so that neighbours meet without a gap.</summary>
    public Rect Snapped()
    {
        var (x, y) = (Round(X), Round(Y));
        return new Rect(x, y, Round(X + Width) - x, Round(Y + Height) - y);
    }

    private static double Round(double value) => Math.Floor(value + 0.5);
}
