using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A direction clockwise from true north.</summary>
/// <param name="Value">The direction [deg], 0 up to but not 360; build with <see cref="Of"/> to bring it there.</param>
public readonly record struct TrueDegrees(double Value)
{
    /// <summary>The direction brought into 0 up to but not 360.</summary>
    /// <param name="degrees">Any finite angle [deg].</param>
    public static TrueDegrees Of(double degrees)
    {
        if (degrees is >= 0 and < 360) return new TrueDegrees(degrees);
        var turned = degrees % 360;
        if (turned < 0) turned += 360;
        return new TrueDegrees(turned >= 360 ? 0 : turned);
    }

    /// <summary>The magnetic direction: true minus variation, variation positive east.</summary>
    /// <param name="variationDeg">Magnetic variation [deg], positive east.</param>
    public MagneticDegrees ToMagnetic(double variationDeg) => MagneticDegrees.Of(Value - variationDeg);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.#", CultureInfo.InvariantCulture) + "°";
}
