using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Flight.Route;

/// <summary>A speed and level as flight plans write them, such as <c>N0250F160</c> (ICAO Doc 4444, appendix 2, item 15: cruising speed and level).</summary>
/// <param name="TrueAirspeed">Speed; null where it was given as a Mach number.</param>
/// <param name="Mach">Mach number; null where the speed was given otherwise.</param>
/// <param name="Level">Level as altitude [ft]; null for <c>VFR</c>.</param>
public sealed partial record SpeedLevelGroup(Knots? TrueAirspeed, double? Mach, Feet? Level)
{
    /// <summary>
    /// Reads a group. Speeds: <c>N0250</c> knots, <c>K0460</c> kilometres per hour, <c>M082</c> Mach. Levels: <c>F160</c> flight level, <c>A045</c> altitude in
    /// hundreds of feet, <c>S1130</c> and <c>M0840</c> tens of metres, <c>VFR</c>. Case does not matter.
    /// </summary>
    /// <param name="text">The group.</param>
    /// <returns>The group; null where the text is none.</returns>
    public static SpeedLevelGroup? Read(string text)
    {
        var match = Pattern().Match(text);
        if (!match.Success) return null;
        var (speed, mach) = Speed(match.Groups["speed"].Value);
        return new SpeedLevelGroup(speed, mach, LevelOf(match.Groups["level"].Value));
    }

    private static (Knots? Speed, double? Mach) Speed(string text)
    {
        var figures = Figures(text);
        return char.ToUpperInvariant(text[0]) switch
        {
            'N' => (new Knots(figures), null),
            'K' => (new Knots(figures * 1000.0 / NauticalMiles.MetresPerNauticalMile), null),
            _ => (null, figures / 100.0),
        };
    }

    private static Feet? LevelOf(string text) => char.ToUpperInvariant(text[0]) switch
    {
        'V' => null,
        'F' or 'A' => new Feet(Figures(text) * 100.0),
        _ => new Feet(Figures(text) * 10.0 / Feet.MetresPerFoot),
    };

    private static int Figures(string text) => int.Parse(text.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<speed>N[0-9]{4}|K[0-9]{4}|M[0-9]{3})(?<level>F[0-9]{3}|A[0-9]{3}|S[0-9]{4}|M[0-9]{4}|VFR)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex Pattern();
}
