using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Flight.Route;

namespace Batch.Flight.Filing;

/// <summary>The fields of a flight plan as they are written (ICAO Doc 4444, appendix 2; the FAA's form 7233-4 takes the same).</summary>
public static partial class FlightPlanField
{
    /// <summary>Stands where there is no designator: the name follows in item 18.</summary>
    public const string NoDesignator = "ZZZZ";

    private const double LightUpToKg = 7_000;
    private const double HeavyFromKg = 136_000;

    /// <summary>Item 7: a registration as aircraft identification, without its hyphen; null where that is not one to seven letters and figures.</summary>
    /// <param name="registration">As painted on, such as <c>X-HLDA</c>.</param>
    public static string? Identification(string registration)
    {
        var plain = registration.Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant();
        return IdentificationPattern().IsMatch(plain) ? plain : null;
    }

    /// <summary>Item 9: number where more than one, type designator or <see cref="NoDesignator"/>, wake turbulence category.</summary>
    /// <param name="count">Number of aircraft.</param>
    /// <param name="designator">Type designator of two to four letters and figures.</param>
    /// <param name="wake">Category.</param>
    public static string TypeOfAircraft(int count, string designator, WakeCategory wake) =>
        (count > 1 ? count.ToString(CultureInfo.InvariantCulture) : "") + designator + "/"
            + wake switch { WakeCategory.Light => 'L', WakeCategory.Medium => 'M', _ => 'H' };

    /// <summary>The category of a maximum takeoff weight.</summary>
    /// <param name="maximumTakeoff">Maximum certificated takeoff weight.</param>
    public static WakeCategory WakeOf(Pounds maximumTakeoff) => maximumTakeoff.Kilograms switch
    {
        <= LightUpToKg => WakeCategory.Light,
        < HeavyFromKg => WakeCategory.Medium,
        _ => WakeCategory.Heavy,
    };

    /// <summary>Whether a type designator has the form of one (ICAO Doc 8643: two to four letters and figures, a letter first).</summary>
    /// <param name="text">The text.</param>
    public static bool IsTypeDesignator(string text) => TypeDesignatorPattern().IsMatch(text);

    /// <summary>Whether an ident is a four-letter location indicator.</summary>
    /// <param name="ident">The ident.</param>
    public static bool IsLocationIndicator(string ident) => LocationPattern().IsMatch(ident);

    /// <summary>
    /// Whether an ident has the form of a published point: two to five letters and figures, a letter first (ICAO Doc 4444, appendix 2, item 15, from memory).
    /// </summary>
    /// <param name="ident">The ident.</param>
    public static bool IsSignificantPoint(string ident) => PointPattern().IsMatch(ident.ToUpperInvariant());

    /// <summary>Whether a text has the form of item 10: equipment, a slash, surveillance.</summary>
    /// <param name="text">The text.</param>
    public static bool IsEquipment(string text) => EquipmentPattern().IsMatch(text);

    /// <summary>Item 13: departure and time of off blocks in UTC.</summary>
    /// <param name="ident">Location indicator.</param>
    /// <param name="offBlocks">Estimated off-block time.</param>
    public static string Departure(string ident, Instant offBlocks) => ident + offBlocks.ToString("HHmm", CultureInfo.InvariantCulture);

    /// <summary>Item 16: destination and total estimated elapsed time.</summary>
    /// <param name="ident">Location indicator.</param>
    /// <param name="elapsed">Takeoff to landing, less than 100 hours.</param>
    public static string Destination(string ident, Duration elapsed) => ident + HoursMinutes(elapsed);

    /// <summary>Hours and minutes in four figures, rounded to the minute.</summary>
    /// <param name="span">Less than 100 hours.</param>
    public static string HoursMinutes(Duration span)
    {
        var minutes = (int)Math.Round(span.TotalMinutes, MidpointRounding.AwayFromZero);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}{minutes % 60:00}");
    }

    /// <summary>Item 15: cruising speed in knots and level, such as <c>N0250F160</c>.</summary>
    /// <param name="trueAirspeed">True airspeed, rounded to the knot.</param>
    /// <param name="level">Level, rounded to hundreds of feet.</param>
    /// <param name="flightLevelsFrom">Height from which levels are flight levels; below it stands an altitude.</param>
    public static string SpeedAndLevel(Knots trueAirspeed, Feet level, Feet flightLevelsFrom) => string.Create(CultureInfo.InvariantCulture,
        $"N{Math.Round(trueAirspeed.Value, MidpointRounding.AwayFromZero):0000}{(level >= flightLevelsFrom ? 'F' : 'A')}{Math.Round(level.Value / 100, MidpointRounding.AwayFromZero):000}");

    /// <summary>Item 18: date of flight, that of off blocks in UTC.</summary>
    /// <param name="offBlocks">Off blocks.</param>
    public static string DateOfFlight(Instant offBlocks) => "DOF/" + offBlocks.ToString("yyMMdd", CultureInfo.InvariantCulture);

    /// <summary>Item 18: an aerodrome without location indicator, its name and place.</summary>
    /// <param name="word">DEP, DEST or ALTN.</param>
    /// <param name="ident">Ident or name.</param>
    /// <param name="point">Its place; null where not known.</param>
    public static string Aerodrome(string word, string ident, Earth.GeoPoint? point) =>
        $"{word}/{Plain(ident)}{(point is { } place ? " " + CoordinateText.Write(place) : "")}";

    /// <summary>Item 19: persons aboard in three figures.</summary>
    /// <param name="persons">Crew and passengers, 0 to 999.</param>
    public static string Persons(int persons) => string.Create(CultureInfo.InvariantCulture, $"P/{persons:000}");

    /// <summary>Words of item 18: letters, figures and blanks only, for a hyphen or a slash would begin another field.</summary>
    /// <param name="text">The text.</param>
    public static string Plain(string text) => Blanks().Replace(NotPlain().Replace(text.ToUpperInvariant(), " "), " ").Trim();

    private const RegexOptions Options = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    [GeneratedRegex("^[A-Z0-9]{1,7}$", Options, 20_000)]
    private static partial Regex IdentificationPattern();

    [GeneratedRegex("^[A-Z][A-Z0-9]{1,3}$", Options, 20_000)]
    private static partial Regex TypeDesignatorPattern();

    [GeneratedRegex("^[A-Z]{4}$", Options, 20_000)]
    private static partial Regex LocationPattern();

    [GeneratedRegex("^[A-Z][A-Z0-9]{1,4}$", Options, 20_000)]
    private static partial Regex PointPattern();

    [GeneratedRegex("^[A-Z0-9]+/[A-Z0-9]+$", Options, 20_000)]
    private static partial Regex EquipmentPattern();

    [GeneratedRegex("[^A-Z0-9]", Options, 20_000)]
    private static partial Regex NotPlain();

    [GeneratedRegex(" +", Options, 20_000)]
    private static partial Regex Blanks();
}
