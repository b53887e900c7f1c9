using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Airframe;

/// <summary>Whether the aircraft is in service, and what is deferred on it.</summary>
internal sealed class Serviceable : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-03";

    /// <inheritdoc/>
    public string Title => "In service, deferred items";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: status", "Aircraft: deferred items", "Notices"];

    /// <inheritdoc/>
    public string Actor => "maintenance";

    private static readonly ImmutableArray<string> Good = ["in service", "serviceable", "available", "active"];
    private static readonly ImmutableArray<string> Bad =
        ["out of service", "unserviceable", "not available", "in maintenance", "maintenance", "grounded", "sold"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var aircraft = leg.Aircraft;
        var status = aircraft.Status.Trim();
        var cell = aircraft.Origin.Cell(nameof(Aircraft.Status));
        var inService = ruling.Condition("in service");
        if (status.Length == 0)
        {
            yield return ruling.NotChecked($"the status of {aircraft.Registration} is not given", cell);
        }
        else if (Bad.Contains(status, StringComparer.OrdinalIgnoreCase))
        {
            yield return ruling.Trips(inService, $"{aircraft.Registration} is {status} by the Aircraft sheet.", cell);
        }
        else if (!Good.Contains(status, StringComparer.OrdinalIgnoreCase))
        {
            yield return ruling.NotChecked(
                $"the status of {aircraft.Registration} reads '{status}', which is neither {Words.List(Good[..2])} nor {Words.List(Bad[..2])}", cell);
        }
        else
        {
            yield return ruling.Pass($"{aircraft.Registration} is {status}.", inService, cell);
        }

        foreach (var notice in leg.Week.Board.About(aircraft.Registration, leg.Plan.Times.OffBlocks, leg.Plan.Times.OnBlocks))
        {
            yield return notice.Effect == NoticeEffect.Closed
                ? ruling.Trips(inService, $"A notice takes {aircraft.Registration} out of service during this leg.", notice.Origin.ToString())
                : ruling.Note($"Notice for {aircraft.Registration}: {notice.Text}", notice.Origin.ToString());
        }

        if (aircraft.DeferredItems.Trim().Length > 0)
        {
            yield return ruling.Trips(ruling.Condition("deferred items"),
                $"{aircraft.Registration} has open deferred items; see that they are allowed for this leg: {aircraft.DeferredItems.Trim()}",
                aircraft.Origin.Cell(nameof(Aircraft.DeferredItems)));
        }
    }
}
