using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A direction clockwise from magnetic north.</summary>
/// <param name="Value">The direction [deg], 0 up to but not 360; build with <see cref="Of"/> to bring it there.</param>
public readonly record struct MagneticDegrees(double Value)
{
    /// <summary>The direction brought into 0 up to but not 360.</summary>
    /// <param name="degrees">Any finite angle [deg].</param>
    public static MagneticDegrees Of(double degrees)
    {
        var turned = degrees % 360;
        if (turned < 0) turned += 360;
        return new MagneticDegrees(turned >= 360 ? 0 : turned);
    }

    /// <summary>The true direction: magnetic plus variation, variation positive east.</summary>
    /// <param name="variationDeg">Magnetic variation [deg], positive east.</param>
    public TrueDegrees ToTrue(double variationDeg) => TrueDegrees.Of(Value + variationDeg);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.#", CultureInfo.InvariantCulture) + "°";
}
