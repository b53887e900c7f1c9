using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Following;

/// <summary>Whether somebody knows when the flight is overdue: a flight plan, or the operator's own following.</summary>
internal sealed class FlightFollowing : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-02";

    /// <inheritdoc/>
    public string Title => "Flight following";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Legs: flight plan, or Operator: flight following"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var own = leg.Plan.Leg.FlightPlan;
        var how = own.Length > 0 ? own : leg.Operator.FlightFollowing;
        var cell = own.Length > 0 || leg.Operator.FlightFollowing.Length == 0
            ? leg.Cell(nameof(Leg.FlightPlan))
            : leg.Operator.Cells.GetValueOrDefault("Flight following", "");
        if (how.Length == 0)
        {
            yield return ruling.NotChecked("how the flight is followed is not given: a filed flight plan, or the company", cell);
            yield break;
        }

        if (ruling.Condition("followed") is { } followed)
        {
            yield return how == "none"
                ? ruling.Trips(followed, "No flight plan is filed and the company does not follow the flight: nobody would raise the alarm if it were overdue.",
                    cell)
                : ruling.Pass(
                    how == "filed"
                        ? "A flight plan is filed."
                        : "The company follows the flight, with the points of a flight plan: they stand on the sheet.", followed, cell);
        }

        if (ruling.Condition("flight plan under IFR") is { } instrument)
        {
            yield return how == "filed"
                ? ruling.Pass("A flight plan is filed, as IFR asks for.", instrument, cell)
                : ruling.Trips(instrument, "The leg is under IFR, and no flight plan is filed.", cell);
        }
    }
}
