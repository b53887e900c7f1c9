using System.Diagnostics;
using System.Text.Json;
using Batch.Checks;
using Batch.Flight.Filing;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Register;

namespace Batch.Sheets.Run;

/// <summary>One leg in <c>run.json</c>.</summary>
internal static class LegWriter
{
    public static void Members(Utf8JsonWriter json, CheckedWeek week, CheckedLeg leg, LoadPrints loads)
    {
        switch (leg.Plan)
        {
            case LegPlan.Planned planned:
                PlannedMembers(json, week, leg, planned, loads);
                break;
            case LegPlan.Unplanned unplanned:
                UnplannedMembers(json, week, leg, unplanned);
                break;
            default:
                throw new UnreachableException();
        }
    }

    private static void PlannedMembers(Utf8JsonWriter json, CheckedWeek week, CheckedLeg leg, LegPlan.Planned plan, LoadPrints loads)
    {
        Names(json, plan);
        json.WriteString("state", StateWord.Of(leg.State));
        json.WriteString("type", plan.Type.Name);
        json.WriteString("rules", Words.Of(plan.Rules));
        json.WriteString("purpose", Words.Of(plan.Purpose));
        json.TextOrNull("override", leg.Override);
        json.TextOrNull("remarks", plan.Leg.Remarks);
        json.WriteString("loadSha256", loads.Of(plan.Key));
        json.TextOrNull("fromName", plan.From.Name);
        json.TextOrNull("toName", plan.To.Name);
        json.WriteString("fromZone", plan.From.Zone.Id);
        json.WriteString("toZone", plan.To.Zone.Id);
        json.At("offBlocksUtc", plan.Times.OffBlocks);
        json.At("takeoffUtc", plan.Times.Takeoff);
        json.At("landingUtc", plan.Times.Landing);
        json.At("onBlocksUtc", plan.Times.OnBlocks);
        json.Distance("distanceNm", plan.Profile.Distance);
        json.Distance("airDistanceNm", plan.Profile.AirDistance);
        json.Minutes("timeMin", plan.Profile.Time);
        json.Minutes("blockMin", plan.Times.Block);
        json.Height("levelFt", plan.Profile.Level);
        json.Height("highestLevelFt", plan.Profile.Highest);
        json.WriteString("setting", plan.Profile.Setting);
        json.WriteString("route", plan.Route.Text);
        json.Object("topOfClimb", () => Place(json, plan.Profile.TopOfClimb));
        json.Object("topOfDescent", () => Place(json, plan.Profile.TopOfDescent));
        FiguresWriter.Fuel(json, plan);
        FiguresWriter.Load(json, plan);
        json.Object("runway", () =>
        {
            json.Object("departure", () => FiguresWriter.Runway(json, plan.Departure));
            json.Object("arrival", () => FiguresWriter.Runway(json, plan.Arrival));
        });
        json.Objects("alternates", plan.Alternates, FiguresWriter.Alternate);
        json.Minutes("nightMin", plan.Daylight.Night);
        json.WriteBoolean("nightLanding", plan.Daylight.IsNightLanding);
        json.Objects("log", plan.Log, FiguresWriter.Log);
        json.Objects("options", plan.Options, FiguresWriter.Option);
        json.Object("flightPlan", () => Filed(json, FlightPlanFiling.Of(plan, week.Plan.Input.Airports, week.Plan.Input.Operator.Name)));
        Findings(json, week, leg);
        json.Texts("assumptions", plan.Assumptions);
        json.Texts("notes", plan.Notes);
    }

    private static void Filed(Utf8JsonWriter json, FlightPlanMessage message)
    {
        json.Texts("message", message.Lines);
        json.WriteString("supplementary", message.Supplementary);
        json.Texts("missing", message.Missing);
    }

    private static void UnplannedMembers(Utf8JsonWriter json, CheckedWeek week, CheckedLeg leg, LegPlan.Unplanned plan)
    {
        Names(json, plan);
        json.WriteString("state", StateWord.Of(leg.State));
        json.At("offBlocksUtc", plan.Leg?.OffBlocks);
        json.TextOrNull("fromZone", week.Plan.Input.Airports.GetValueOrDefault(plan.Leg?.From ?? "")?.Zone.Id);
        Why(json, plan);
        InOwnUnit(json, week, "why", plan.Why, () => InKilograms.Of(plan.Why));
        Findings(json, week, leg);
        json.Texts("assumptions", []);
    }

    /// <summary>Which leg it is, who flies it and where.</summary>
    public static void Names(Utf8JsonWriter json, LegPlan plan)
    {
        if (plan is LegPlan.Planned planned)
            Names(json, planned.Leg);
        else if (plan is LegPlan.Unplanned { Leg: { } read })
            Names(json, read);
        else if (plan is LegPlan.Unplanned unplanned)
            BrokenNames(json, unplanned);
    }

    /// <summary>Why a leg could not be planned.</summary>
    public static void Why(Utf8JsonWriter json, LegPlan.Unplanned plan)
    {
        json.WriteString("why", plan.Why);
        json.WriteString("where", plan.Where);
        json.WriteString("expected", plan.Expected);
        json.Texts("cells", plan.Cells);
        json.WriteBoolean("faultOfTheProgram", plan.IsFault);
    }

    private static void Names(Utf8JsonWriter json, Leg leg)
    {
        json.WriteString("trip", leg.Key.Trip);
        json.WriteNumber("leg", leg.Key.Number);
        json.WriteString("aircraft", leg.Aircraft);
        json.WriteString("from", leg.From);
        json.WriteString("to", leg.To);
        json.TextOrNull("alternate", leg.Alternate);
        json.TextOrNull("secondAlternate", leg.SecondAlternate);
        json.WriteString("captain", leg.Captain);
        json.TextOrNull("secondPilot", leg.SecondPilot);
    }

    private static void BrokenNames(Utf8JsonWriter json, LegPlan.Unplanned plan)
    {
        var broken = plan.Broken;
        json.WriteString("trip", plan.Key.Trip);
        json.WriteNumber("leg", plan.Key.Number);
        if (UnreadNumber.Row(plan) is > 0 and var row) json.WriteNumber("row", row);
        json.WriteString("aircraft", broken?.Aircraft ?? "");
        json.WriteString("from", broken?.From ?? "");
        json.WriteString("to", broken?.To ?? "");
        json.WriteNull("alternate");
        json.WriteNull("secondAlternate");
        json.WriteString("captain", broken?.Captain ?? "");
        json.TextOrNull("secondPilot", broken?.SecondPilot);
    }

    private static void Place(Utf8JsonWriter json, ProfilePoint point)
    {
        json.Distance("distanceNm", point.Distance);
        json.Minutes("timeMin", point.Elapsed);
        json.Position(point.Position);
        json.Height("altitudeFt", point.Altitude);
    }

    private static void Findings(Utf8JsonWriter json, CheckedWeek week, CheckedLeg leg)
    {
        json.Objects("findings", leg.Shown, (to, finding) =>
        {
            FindingWriter.Members(to, finding);
            InOwnUnit(to, week, "text", finding.Text, () => InKilograms.Sentence(finding));
        });
        json.Texts("passed",
            leg.Findings.Where(finding => finding.Verdict == Verdict.Pass).Select(finding => finding.Check).Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal));
        json.Texts("notApplicable",
            leg.Findings.Where(finding => finding.Verdict == Verdict.NotApplicable).Select(finding => finding.Check).Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal));
    }

    /// <summary>
    /// A sentence in kilograms besides, for the mail of an operator who thinks in them: it cannot be made from the rounded pounds of this file.
    /// </summary>
    private static void InOwnUnit(Utf8JsonWriter json, CheckedWeek week, string name, string inPounds, Func<string> inKilograms)
    {
        if (week.Plan.Input.Operator.WeightUnit == WeightUnit.Kilograms && inKilograms() is var own && own != inPounds)
            json.WriteString(name + "Kg", own);
    }
}
