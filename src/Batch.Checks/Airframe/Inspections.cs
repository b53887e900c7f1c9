using Batch.Checks.Crews;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Checks.Airframe;

/// <summary>Inspections by hours and by date against the end of the leg.</summary>
internal sealed class Inspections : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-01";

    /// <inheritdoc/>
    public string Title => "Inspections";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: hours", "Aircraft: next inspection at", "Aircraft: annual due"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => false;

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "maintenance";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["hours of warning"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var aircraft = leg.Aircraft;
        yield return Hours(leg, ruling);
        yield return ValidUntil.Look(leg, ruling, "Annual inspection of " + aircraft.Registration, aircraft.AnnualDue, ruling.Condition("inspections"),
            hasGrace: false, aircraft.Origin.Cell(nameof(Aircraft.AnnualDue)));
    }

    private static Finding Hours(LegUnderCheck leg, Ruling ruling)
    {
        var aircraft = leg.Aircraft;
        var cell = aircraft.Origin.Cell(nameof(Aircraft.NextInspectionAt));
        if (aircraft.Hours is not { } hours || aircraft.NextInspectionAt is not { } due)
        {
            return ruling.NotChecked($"the hours of {aircraft.Registration}, or those at which the next inspection is due, are not given", cell);
        }

        var steps = (leg.Week.Aircraft(aircraft.Registration)?.Steps ?? []).TakeWhile(step => step.Leg != leg.Plan.Key).ToImmutableArray();
        var flown = steps.Select(step => leg.Week.Leg(step.Leg)).OfType<LegPlan.Planned>()
            .Sum(plan => plan.Times.Air.TotalHours) + leg.Plan.Times.Air.TotalHours;
        var margin = due - hours - flown;
        var inspections = ruling.Condition("inspections");
        var warning = ruling.Amount("hours of warning");
        var printed = PrintedTrio.Of(due, hours + flown, isLeast: false, margin >= -Ruling.Noise, PrintedTrio.StepsPer("h", due));
        var text = $"{aircraft.Registration} has {Words.Amount(printed.Actual, "h")} at the end of this leg, and the next inspection is due at {Words.Amount(printed.Limit, "h")}.";
        var answer = margin < -Ruling.Noise ? ruling.Trips(inspections, text, cell)
            : steps.FirstOrDefault(step => leg.Week.Leg(step.Leg) is LegPlan.Unplanned) is { } unplanned
            ? ruling.NotChecked(
                $"leg {unplanned.Leg} of {aircraft.Registration} could not be planned; without it {Words.Amount(margin, "h")} are left to the inspection", cell)
            : margin < warning.Value ? ruling.Trips(warning, text, cell) : ruling.Pass(text, inspections, cell);
        return answer with { Required = due, Actual = hours + flown, Margin = margin, Unit = "h" };
    }
}
