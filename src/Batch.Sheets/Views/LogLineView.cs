using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One line of the navigation log.</summary>
internal sealed record LogLineView
{
    [Value("Ident of the point; TOC and TOD for top of climb and descent")]
    public required string Point { get; init; }

    [Value("Kind: airport, fix, top of climb, top of descent")]
    public required string Kind { get; init; }

    [Value("Latitude as degrees and minutes, such as N41°30.0′")]
    public required string Latitude { get; init; }

    [Value("Longitude as degrees and minutes, such as W039°15.0′")]
    public required string Longitude { get; init; }

    [Value("Frequency of the point where it has one")]
    public required string Frequency { get; init; }

    [Value("Airway, or DCT, on which the point is reached")]
    public required string Via { get; init; }

    [Value("True course of the stretch to the point")]
    public required Quantity? TrueCourse { get; init; }

    [Value("Magnetic course of the stretch")]
    public required Quantity? MagneticCourse { get; init; }

    [Value("Magnetic variation, positive east; write it with east_west")]
    public required Quantity? Variation { get; init; }

    [Value("Magnetic heading")]
    public required Quantity? Heading { get; init; }

    [Value("Length of the stretch")]
    public required Quantity Distance { get; init; }

    [Value("Distance from the point to the destination along the route")]
    public required Quantity ToGo { get; init; }

    [Value("Altitude at the point")]
    public required Quantity Altitude { get; init; }

    [Value("Least altitude of the stretch")]
    public required Quantity? MinimumAltitude { get; init; }

    [Value("Direction the wind blows from, true")]
    public required Quantity? WindFrom { get; init; }

    [Value("Wind speed")]
    public required Quantity? WindSpeed { get; init; }

    [Value("Outside air temperature")]
    public required Quantity? Temperature { get; init; }

    [Value("True airspeed")]
    public required Quantity? TrueAirspeed { get; init; }

    [Value("Ground speed")]
    public required Quantity? GroundSpeed { get; init; }

    [Value("Time for the stretch")]
    public required Elapsed Time { get; init; }

    [Value("Time since takeoff")]
    public required Elapsed SinceTakeoff { get; init; }

    [Value("Fuel burned on the stretch")]
    public required Quantity Burn { get; init; }

    [Value("Fuel remaining at the point")]
    public required Quantity Remaining { get; init; }

    [Value("Estimated time over the point")]
    public required ClockTime Over { get; init; }

    [Value("Whether this is the first line")]
    public required bool IsFirst { get; init; }

    public static ImmutableArray<LogLineView> Of(LegPlan.Planned plan) => [.. plan.Log.Select((line, index) => Of(plan, line, index == 0))];

    private static LogLineView Of(LegPlan.Planned plan, LogLine line, bool isFirst) => new()
    {
        Point = line.Point,
        Kind = line.Kind switch
        {
            LogPointKind.Airport => "airport",
            LogPointKind.Fix => "fix",
            LogPointKind.TopOfClimb => "top of climb",
            LogPointKind.TopOfDescent => "top of descent",
        },
        Latitude = Coordinate.Latitude(line.Position.LatitudeDeg),
        Longitude = Coordinate.Longitude(line.Position.LongitudeDeg),
        Frequency = line.Kind == LogPointKind.Fix
            ? plan.Route.Segments.Select(segment => segment.To).FirstOrDefault(point => point.Ident == line.Point)?.Frequency ?? ""
            : "",
        Via = line.Via,
        TrueCourse = Quantity.OfDegrees(line.TrueCourse?.Value),
        MagneticCourse = Quantity.OfDegrees(line.MagneticCourse?.Value),
        Variation = Quantity.OfDegrees(line.VariationDeg),
        Heading = Quantity.OfDegrees(line.Heading?.Value),
        Distance = Quantity.Of(line.Distance),
        ToGo = Quantity.Of(plan.Profile.Distance - line.AlongRoute),
        Altitude = Quantity.Of(line.Altitude),
        MinimumAltitude = Quantity.Of(line.MinimumAltitude, RoundingWay.Up),
        WindFrom = Quantity.OfDegrees(line.WindFrom?.Value),
        WindSpeed = Quantity.Of(line.WindSpeed),
        Temperature = Quantity.Of(line.Temperature),
        TrueAirspeed = Quantity.Of(line.TrueAirspeed),
        GroundSpeed = Quantity.Of(line.GroundSpeed),
        Time = new Elapsed(line.Time) { Before = line.Over - line.Time - plan.Times.Takeoff },
        SinceTakeoff = new Elapsed(line.Over - plan.Times.Takeoff),
        Burn = Quantity.OfFuel(line.Burn, plan.Type.FuelDensity, RoundingWay.Down) with { TakenFrom = (line.Remaining + line.Burn).Value },
        Remaining = Quantity.OfFuel(line.Remaining, plan.Type.FuelDensity, RoundingWay.Down),
        Over = new ClockTime(line.Over, line.AlongRoute.Value * 2 < plan.Profile.Distance.Value ? plan.From.Zone : plan.To.Zone),
        IsFirst = isFirst,
    };
}
