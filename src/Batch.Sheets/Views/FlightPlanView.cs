using Batch.Flight.Filing;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The flight plan of a leg, ready to be filed.</summary>
internal sealed record FlightPlanView
{
    [Value("The message, line by line; what the books do not hold is a blank to write on")]
    public required ImmutableArray<string> Lines { get; init; }

    [Value("Endurance and persons aboard, which are kept and not sent")]
    public required string Supplementary { get; init; }

    [Value("What is missing, as sentences")]
    public required ImmutableArray<string> Missing { get; init; }

    public static FlightPlanView Of(LegPlan.Planned plan, OperatorWeek week)
    {
        var message = FlightPlanFiling.Of(plan, week.Airports, week.Operator.Name);
        return new FlightPlanView { Lines = message.Lines, Supplementary = message.Supplementary, Missing = message.Missing };
    }
}
