using System.Globalization;

namespace Batch.Flight.Air.Bulletins;

/// <summary>The forecast for one station and altitude.</summary>
public sealed record WindsAloftCell
{
    /// <summary>Sign of temperature is omitted, and negative, above this altitude [ft] (AC 00-45H, winds and temperatures aloft; AIM 7-1).</summary>
    public const double AlwaysNegativeAboveFt = 24000;

    /// <summary>The altitude: true up to 12,000 ft, pressure altitude above.</summary>
    public required Feet Altitude { get; init; }

    /// <summary>The group as written.</summary>
    public required string Group { get; init; }

    /// <summary>Wind below 5 kt, direction variable (9900).</summary>
    public bool IsLightAndVariable { get; init; }

    /// <summary>The wind, true; null where light and variable.</summary>
    public Wind? Wind { get; init; }

    /// <summary>The speed is the one given or more (199 kt).</summary>
    public bool SpeedAtLeast { get; init; }

    /// <summary>The temperature; null where not forecast (within 2,500 ft of the ground and at 3,000 ft).</summary>
    public Celsius? Temperature { get; init; }

    /// <summary>
    /// Decodes a group: DDff, DDffTT or DDff+TT, tens of degrees true, knots and degrees Celsius. DD 51 to 86: less 50, and 100 kt more; then ff 99 is 199 kt
    /// or more. 9900: light and variable. Source: AC 00-45H, chapter 5.
    /// </summary>
    /// <param name="group">The group.</param>
    /// <param name="altitude">Its altitude [ft], which decides the sign of a temperature without one.</param>
    /// <param name="why">What is wrong; empty when the group was read.</param>
    /// <returns>The cell, or null where the group is none.</returns>
    public static WindsAloftCell? Decode(string group, Feet altitude, out string why)
    {
        why = "expected DDff, DDff+TT, DDff-TT, or above 24,000 ft DDffTT";
        if (group.Length is not (4 or 6 or 7) || !group.AsSpan(0, 4).ContainsOnlyDigits()) return null;
        Celsius? temperature = null;
        if (group.Length > 4)
        {
            var signed = group.Length == 7;
            if (!group.AsSpan(group.Length - 2).ContainsOnlyDigits() || (signed && group[4] is not ('+' or '-'))) return null;
            if (!signed && altitude.Value <= AlwaysNegativeAboveFt)
            {
                why = "the temperature has no sign, which is omitted only above 24,000 ft";
                return null;
            }

            var degrees = int.Parse(group.AsSpan(group.Length - 2), CultureInfo.InvariantCulture);
            temperature = new Celsius(signed && group[4] == '+' ? degrees : 0 - degrees);
        }

        var (tens, speed) = (BulletinTime.Two(group, 0), BulletinTime.Two(group, 2));
        var cell = new WindsAloftCell { Altitude = altitude, Group = group, Temperature = temperature };
        why = "";
        if (tens == 99 && speed == 0) return cell with { IsLightAndVariable = true };
        var isFast = tens is >= 51 and <= 86;
        if (isFast) (tens, speed) = (tens - 50, speed + 100);
        if (tens <= 36 && (tens > 0 || speed == 0))
            return cell with { Wind = new Wind(TrueDegrees.Of(tens * 10), new Knots(speed)), SpeedAtLeast = isFast && speed == 199 };
        why = "the first two digits are 01 to 36, 51 to 86 for 100 kt and more, or 99 with 00";
        return null;
    }
}
