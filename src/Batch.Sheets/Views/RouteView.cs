using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The route of a leg.</summary>
internal sealed record RouteView
{
    [Value("Route text between the airports; DCT for direct")]
    public required string Text { get; init; }

    [Value("The backup route; nothing where none is given")]
    public required string Backup { get; init; }

    [Value("Distance over the ground")]
    public required Quantity Distance { get; init; }

    [Value("Distance through the air")]
    public required Quantity AirDistance { get; init; }

    [Value("Cruise level")]
    public required Quantity Level { get; init; }

    [Value("Highest cruise level where the route steps up from the first; nothing where it does not")]
    public required Quantity? StepTo { get; init; }

    [Value("Cruise setting")]
    public required string Setting { get; init; }

    [Value("Distance from the departure to the top of climb")]
    public required Quantity ToTopOfClimb { get; init; }

    [Value("Distance from the top of descent to the destination")]
    public required Quantity FromTopOfDescent { get; init; }

    [Value("Greatest minimum altitude on the way; nothing where none is known")]
    public required Quantity? HighestMinimum { get; init; }

    public static RouteView Of(LegPlan.Planned plan) => new()
    {
        Text = plan.Route.Text.Length == 0 ? "DCT" : plan.Route.Text,
        Backup = plan.Leg.BackupRoute,
        Distance = Quantity.Of(plan.Profile.Distance),
        AirDistance = Quantity.Of(plan.Profile.AirDistance),
        Level = Quantity.Of(plan.Profile.Level),
        StepTo = plan.Profile.Highest > plan.Profile.Level ? Quantity.Of(plan.Profile.Highest) : null,
        Setting = plan.Profile.Setting,
        ToTopOfClimb = Quantity.Of(plan.Profile.TopOfClimb.Distance),
        FromTopOfDescent = Quantity.Of(plan.Profile.Distance - plan.Profile.TopOfDescent.Distance),
        HighestMinimum = Quantity.Of(plan.Route.Segments.Max(segment => segment.MinimumAltitude), RoundingWay.Up),
    };
}
