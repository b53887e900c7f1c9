using System.Runtime.InteropServices;

namespace Batch.Paper.Boxes;

/// <summary>Margins that meet: the largest positive plus the smallest negative one (CSS 2.2, section 8.3.1).</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct MarginStrut(double Positive, double Negative)
{
    public double Value => Positive + Negative;

    public MarginStrut With(double margin) => margin >= 0 ? this with { Positive = Math.Max(Positive, margin) } : this with { Negative = Math.Min(Negative, margin) };

    public MarginStrut With(MarginStrut other) => new(Math.Max(Positive, other.Positive), Math.Min(Negative, other.Negative));
}
