using System.Runtime.InteropServices;

namespace Batch.Paper.Paint;

/// <summary>Affine map x' = A x + C y + E, y' = B x + D y + F.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Matrix(double A, double B, double C, double D, double E, double F)
{
    public static readonly Matrix Identity = new(1, 0, 0, 1, 0, 0);

    /// <summary>Mean scale, for line widths.</summary>
    public double Scale => Math.Sqrt(Math.Abs(A * D - B * C));

    public static Matrix Shift(double x, double y) => new(1, 0, 0, 1, x, y);

    /// <summary>This map after <paramref name="inner"/>.</summary>
    public Matrix After(Matrix inner) => new(
        A * inner.A + C * inner.B, B * inner.A + D * inner.B, A * inner.C + C * inner.D, B * inner.C + D * inner.D,
        A * inner.E + C * inner.F + E, B * inner.E + D * inner.F + F);

    public (double X, double Y) Map(double x, double y) => (A * x + C * y + E, B * x + D * y + F);
}
