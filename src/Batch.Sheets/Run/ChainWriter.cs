using System.Text.Json;
using Batch.Checks;
using Batch.Flight.Plan;
using NodaTime.Text;

namespace Batch.Sheets.Run;

/// <summary>The tables of persons and aircraft in <c>run.json</c>.</summary>
internal static class ChainWriter
{
    public static void Crew(Utf8JsonWriter json, CheckedWeek week, CrewWeek person)
    {
        var known = week.Plan.Input.Crew.GetValueOrDefault(person.Code);
        json.WriteString("code", person.Code);
        json.TextOrNull("name", known?.Name);
        json.TextOrNull("mail", known?.Mail);
        json.TextOrNull("base", known?.Base);
        json.WriteString("packet", SheetPaths.Packet(person.Code));
        json.Minutes("flightTimeMin", person.FlightTime);
        var table = week.DutyTables.FirstOrDefault(table => string.Equals(table.Code, person.Code, StringComparison.OrdinalIgnoreCase));
        json.TextOrNull("loggedFrom", table?.LoggedFrom is { } first ? LocalDatePattern.Iso.Format(first) : null);
        json.Objects("limits", table?.Limits ?? [], Limit);
        json.Objects("duties", person.Duties, (to, duty) => Duty(to, duty, table?.Periods.FirstOrDefault(period => period.Report == duty.Report)));
        json.Objects("chain", person.Steps, Step);
    }

    public static void Aircraft(Utf8JsonWriter json, CheckedWeek week, AircraftWeek aircraft)
    {
        var known = week.Plan.Input.Fleet.GetValueOrDefault(aircraft.Registration);
        json.WriteString("registration", aircraft.Registration);
        json.TextOrNull("type", known?.Type);
        json.TextOrNull("home", known?.Home);
        json.Minutes("blockMin", aircraft.Block);
        json.Minutes("airMin", aircraft.Air);
        json.WriteNumber("landings", aircraft.Landings);
        json.Weight("upliftLb", aircraft.Uplift);
        json.Weight("burnedLb", aircraft.Burned);
        json.Rounded("hoursBefore", known?.Hours, 1);
        json.Rounded("hoursAfter", known?.Hours + aircraft.Air.TotalHours, 1);
        json.Rounded("nextInspectionAtHours", known?.NextInspectionAt, 1);
        json.Objects("chain", aircraft.Steps, Step);
    }

    private static void Duty(Utf8JsonWriter json, DutyDay duty, DutyPeriod? period)
    {
        json.At("reportUtc", duty.Report);
        json.At("releaseUtc", duty.Release);
        json.Minutes("dutyMin", duty.Length);
        json.Minutes("flightTimeMin", duty.FlightTime);
        json.WriteNumber("nightLandings", duty.NightLandings);
        json.Minutes("restBeforeMin", duty.RestBefore);
        json.Texts("legs", duty.Legs.Select(leg => leg.ToString()));
        json.TextOrNull("from", period?.From);
        json.TextOrNull("to", period?.To);
        json.TextOrNull("reportZone", period?.ReportZone.Id);
        json.TextOrNull("releaseZone", period?.ReleaseZone.Id);
        json.Objects("limits", period?.Limits ?? [], Limit);
    }

    private static void Limit(Utf8JsonWriter json, DutyLimit limit)
    {
        json.WriteString("limit", limit.Key);
        json.WriteString("name", limit.Name);
        json.WriteString("leg", limit.At.ToString());
        json.At("fromUtc", limit.From);
        json.At("untilUtc", limit.Until);
        json.Rounded("used", limit.Used, 2);
        json.Rounded("allowed", limit.Limit, 2);
        json.Rounded("left", limit.Left, 2);
        json.WriteString("unit", limit.Unit);
        json.WriteBoolean("atLeast", limit.IsLeast);
        json.WriteBoolean("known", limit.IsKnown);
        json.TextOrNull("why", limit.Unknown);
        json.TextOrNull("citation", limit.Citation);
        json.WriteBoolean("basisUnconfirmed", limit.IsBasisUnconfirmed);
    }

    private static void Step(Utf8JsonWriter json, ChainStep step)
    {
        json.WriteString("leg", step.Leg.ToString());
        json.TextOrNull("before", step.Before?.ToString());
        json.TextOrNull("standsAt", step.StandsAt);
        json.WriteString("from", step.From);
        json.WriteString("to", step.To);
        json.At("offBlocksUtc", step.OffBlocks);
        json.At("onBlocksUtc", step.OnBlocks);
        json.Minutes("groundMin", step.Ground);
    }
}
