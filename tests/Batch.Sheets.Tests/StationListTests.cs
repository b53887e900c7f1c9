using Batch.Flight.Plan;
using Batch.Sheets.Views;

namespace Batch.Sheets.Tests;

public class StationListTests
{
    private static LoadSheet Load { get; } = ((LegPlan.Planned)SampleWeek.Made.Legs[0].Plan).Load;

    private static LoadItem Item(LoadItemKind kind, double pounds) =>
        new() { What = "one more", Kind = kind, Station = "", Weight = new Pounds(pounds), Arm = new Inches(200) };

    // A person without a seat and bags without a station keep their weight in the sums: the list that the loader adds up shows them.
    [Fact]
    public void What_has_no_place_stands_behind_the_stations()
    {
        var load = Load with { Items = [.. Load.Items, Item(LoadItemKind.Passenger, 180), Item(LoadItemKind.Passenger, 150), Item(LoadItemKind.Bags, 40)] };
        var list = StationView.All(load);
        Assert.Equal(Load.Stations.Length + 2, list.Length);
        Assert.Equal([("no seat", 330d, 2), ("no station", 40d, 0)], list[^2..].Select(line => (line.Name, (double)line.Weight.Number, line.Persons)));
        Assert.Equal(Load.Stations.Length, StationView.All(Load).Length);
    }
}
