using System.Diagnostics;
using System.Text.Json;
using Batch.Flight.Plan;

namespace Batch.Sheets.Run;

/// <summary>The figures of a planned leg in <c>run.json</c>.</summary>
internal static class FiguresWriter
{
    public static void Fuel(Utf8JsonWriter json, LegPlan.Planned plan) => json.Object("fuelLb", () =>
    {
        var fuel = plan.Fuel;
        json.Weight("taxi", fuel.Taxi);
        json.Weight("trip", fuel.Trip);
        json.Weight("contingency", fuel.Contingency);
        json.Weight("alternate", fuel.Alternate);
        json.Weight("finalReserve", fuel.FinalReserve);
        json.Weight("additional", fuel.Additional);
        json.Weight("discretionary", fuel.Discretionary);
        json.Weight("neededAfterLanding", fuel.NeededAfterLanding);
        json.Weight("required", fuel.Required);
        json.Weight("before", fuel.Before);
        json.WriteBoolean("beforeKnown", fuel.IsBeforeKnown);
        json.Weight("uplift", fuel.Uplift);
        json.Weight("aboard", fuel.Aboard);
        json.Weight("takeoff", fuel.Takeoff);
        json.Weight("landing", fuel.Landing);
        json.Weight("requiredOnLanding", fuel.RequiredOnLanding);
        json.Weight("margin", fuel.Margin);
        json.Weight("most", fuel.Most);
        json.WriteString("mostBoundBy", fuel.MostBoundBy);
        json.Rounded("densityLbPerUsg", plan.Type.FuelDensity, 3);
        json.WriteBoolean("converged", fuel.IsConverged);
    });

    public static void Load(Utf8JsonWriter json, LegPlan.Planned plan)
    {
        var load = plan.Load;
        json.WriteNumber("pilots", load.Pilots);
        json.WriteNumber("passengers", load.Passengers);
        json.WriteNumber("occupants", load.Occupants);
        Weights(json, plan);
        json.Object("cgIn", () =>
        {
            json.Arm("zeroFuel", load.HasMoments ? load.ZeroFuel.CentreOfGravity : null);
            json.Arm("takeoff", load.HasMoments ? load.Takeoff.CentreOfGravity : null);
            json.Arm("landing", load.HasMoments ? load.Landing.CentreOfGravity : null);
        });
        if (load.Spread is { } spread)
        {
            json.Object("cgSpreadIn", () =>
            {
                json.Object("forward", () => Arms(json, spread.Forward));
                json.Object("aft", () => Arms(json, spread.Aft));
                json.WriteBoolean("inside", spread.StaysInside);
            });
        }

        json.Objects("stations", load.Stations, (to, station) =>
        {
            to.WriteString("station", station.Station.Name);
            to.Weight("weightLb", station.Weight);
            to.WriteNumber("persons", station.Persons);
        });
    }

    public static void Weights(Utf8JsonWriter json, LegPlan.Planned plan) => json.Object("weightsLb", () =>
    {
        var load = plan.Load;
        json.Weight("basicEmpty", load.BasicEmpty.Weight);
        json.Weight("occupants", load.OccupantWeight);
        json.Weight("baggage", load.Baggage);
        json.Weight("payload", load.Payload);
        json.Weight("zeroFuel", load.ZeroFuel.Weight);
        json.Weight("ramp", load.Ramp.Weight);
        json.Weight("takeoff", load.Takeoff.Weight);
        json.Weight("landing", load.Landing.Weight);
        json.Weight("payloadSpare", plan.PayloadSpare);
        json.TextOrNull("payloadSpareBoundBy", plan.PayloadSpareBoundBy);
    });

    private static void Arms(Utf8JsonWriter json, SeatingOutcome seating)
    {
        json.Arm("zeroFuel", seating.ZeroFuel.CentreOfGravity);
        json.Arm("takeoff", seating.Takeoff.CentreOfGravity);
        json.Arm("landing", seating.Landing.CentreOfGravity);
    }

    public static void Runway(Utf8JsonWriter json, RunwayResult result)
    {
        switch (result)
        {
            case RunwayResult.Computed(var use):
                json.WriteString("ident", use.Runway.Ident);
                json.Height("requiredFt", use.Required);
                json.Height("availableFt", use.Available);
                json.Height("tableFt", use.TableDistance);
                json.Height("correctedFt", use.CorrectedDistance);
                if (use.CorrectedStop is { } stop)
                {
                    json.Height("stopFt", stop);
                    json.Height("stopAvailableFt", use.StopAvailable);
                }

                json.Weight("greatestWeightLb", use.GreatestWeight);
                json.Temperature("highestTemperatureC", use.HighestTemperature);
                json.Temperature("temperatureC", use.Temperature);
                json.Speed("headwindKt", use.Headwind);
                json.Speed("crosswindKt", use.Crosswind);
                break;
            case RunwayResult.NotComputed(var why):
                json.WriteNull("ident");
                json.WriteNull("requiredFt");
                json.WriteNull("availableFt");
                json.WriteString("why", why);
                break;
            default:
                throw new UnreachableException();
        }
    }

    public static void Alternate(Utf8JsonWriter json, AlternatePlan alternate)
    {
        json.WriteString("airport", alternate.Airport);
        json.Distance("distanceNm", alternate.Distance);
        json.Height("levelFt", alternate.Level);
        json.Minutes("timeMin", alternate.Time);
        json.Weight("fuelLb", alternate.Fuel);
        json.Angle("magneticCourse", alternate.MagneticCourse.Value);
        json.WriteBoolean("inLadder", alternate.IsFarthest);
    }

    public static void Log(Utf8JsonWriter json, LogLine line)
    {
        json.WriteString("point", line.Point);
        json.WriteString("kind", line.Kind switch
        {
            LogPointKind.Airport => "airport",
            LogPointKind.Fix => "fix",
            LogPointKind.TopOfClimb => "toc",
            LogPointKind.TopOfDescent => "tod",
        });
        json.Position(line.Position);
        json.WriteString("via", line.Via);
        json.Angle("trueCourse", line.TrueCourse?.Value);
        json.Angle("magneticCourse", line.MagneticCourse?.Value);
        json.Rounded("variation", line.VariationDeg, 1);
        json.Angle("heading", line.Heading?.Value);
        json.Distance("legNm", line.Distance);
        json.Distance("alongNm", line.AlongRoute);
        json.Height("levelFt", line.Altitude);
        json.Height("minimumAltitudeFt", line.MinimumAltitude);
        json.Angle("windDir", line.WindFrom?.Value);
        json.Speed("windKt", line.WindSpeed);
        json.Temperature("oatC", line.Temperature);
        json.Speed("tasKt", line.TrueAirspeed);
        json.Speed("gsKt", line.GroundSpeed);
        json.Minutes("minutes", line.Time);
        json.Weight("burnLb", line.Burn);
        json.Weight("remainingLb", line.Remaining);
        json.At("overUtc", line.Over);
    }

    public static void Option(Utf8JsonWriter json, LevelOption option)
    {
        json.Height("levelFt", option.Level);
        json.WriteString("route", option.Route);
        json.WriteBoolean("plan", option.IsPlan);
        json.WriteBoolean("backupRoute", option.IsBackupRoute);
        json.Minutes("timeMin", option.Time);
        json.Weight("tripLb", option.Trip);
        json.Weight("landingLb", option.Landing);
        json.Weight("marginLb", option.Margin);
        json.Speed("headwindKt", option.CruiseHeadwind);
        json.WriteString("state", option.State == State.Note ? "pass" : StateWord.Of(option.State));
        json.WriteString("why", option.Why);
    }
}
