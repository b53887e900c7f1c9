using System.Text.Json;
using Batch.Flight.Earth;
using NodaTime.Text;

namespace Batch.Sheets.Run;

/// <summary>Writes the units of the house to JSON, each rounded in one way. A value that is not known is written as null.</summary>
internal static class RoundedJson
{
    /// <summary>A weight [0.1 lb].</summary>
    public static void Weight(this Utf8JsonWriter json, string name, Pounds? weight) => json.Rounded(name, weight?.Value, 1);

    /// <summary>A distance [0.1 NM].</summary>
    public static void Distance(this Utf8JsonWriter json, string name, NauticalMiles? distance) => json.Rounded(name, distance?.Value, 1);

    /// <summary>A height or a runway length [1 ft].</summary>
    public static void Height(this Utf8JsonWriter json, string name, Feet? height) => json.Rounded(name, height?.Value, 0);

    /// <summary>A time [0.1 min].</summary>
    public static void Minutes(this Utf8JsonWriter json, string name, Duration? time) => json.Rounded(name, time?.TotalMinutes, 1);

    /// <summary>An arm [0.01 in].</summary>
    public static void Arm(this Utf8JsonWriter json, string name, Inches? arm) => json.Rounded(name, arm?.Value, 2);

    /// <summary>A speed [0.1 kt].</summary>
    public static void Speed(this Utf8JsonWriter json, string name, Knots? speed) => json.Rounded(name, speed?.Value, 1);

    /// <summary>A temperature [0.1 °C].</summary>
    public static void Temperature(this Utf8JsonWriter json, string name, Celsius? temperature) => json.Rounded(name, temperature?.Value, 1);

    /// <summary>An angle [0.1 deg]; a full turn is written as zero.</summary>
    public static void Angle(this Utf8JsonWriter json, string name, double? degrees) =>
        json.Rounded(name, degrees is { } value && Math.Round(value, 1, MidpointRounding.AwayFromZero) >= 360 ? 0 : degrees, 1);

    /// <summary>A position, as <c>lat</c> and <c>lon</c> [1e-6 deg].</summary>
    public static void Position(this Utf8JsonWriter json, GeoPoint point)
    {
        json.Rounded("lat", point.LatitudeDeg, 6);
        json.Rounded("lon", point.LongitudeDeg, 6);
    }

    /// <summary>An instant, to the second, in UTC.</summary>
    public static void At(this Utf8JsonWriter json, string name, Instant? instant)
    {
        if (instant is { } known)
            json.WriteString(name, InstantPattern.General.Format(
                Instant.FromUnixTimeSeconds((long)Math.Round(known.ToUnixTimeTicks() / (double)NodaConstants.TicksPerSecond, MidpointRounding.AwayFromZero))));
        else
            json.WriteNull(name);
    }

    /// <summary>A number rounded to so many decimals, never a negative zero; null where it is not known or not finite.</summary>
    public static void Rounded(this Utf8JsonWriter json, string name, double? value, int decimals)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(name, (decimal)Math.Round(number, decimals, MidpointRounding.AwayFromZero));
        else
            json.WriteNull(name);
    }

    /// <summary>A list of texts.</summary>
    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>A text; null for an empty one.</summary>
    public static void TextOrNull(this Utf8JsonWriter json, string name, string? text)
    {
        if (string.IsNullOrEmpty(text))
            json.WriteNull(name);
        else
            json.WriteString(name, text);
    }

    /// <summary>A list of objects.</summary>
    public static void Objects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> members)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            members(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>An object.</summary>
    public static void Object(this Utf8JsonWriter json, string name, Action members)
    {
        json.WriteStartObject(name);
        members();
        json.WriteEndObject();
    }
}
