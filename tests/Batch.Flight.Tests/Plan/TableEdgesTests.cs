using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Flight.Tests.Plan;

/// <summary>Readings at the edges of a table.</summary>
public sealed class TableEdgesTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Curves_that_share_no_altitude_are_read_once(bool mayUse)
    {
        // One altitude a weight: every altitude lies outside one of the two curves.
        var origin = Origin.None;
        Assert.True(PerformanceTable.TryCreate("Holding of Skua 9", ["weight [lb]", "pressure altitude [ft]"], ["fuel flow [lb/h]"],
            [new TableRow([5000, 0], [200], origin), new TableRow([9000, 10000], [300], origin)], out var table, out _));
        var edges = new ProfileTableEdges(mayUse);
        double[] flow = [0];

        var refused = await Task.Run(() => edges.Read(table!, -1, [7000, 1500], flow)).WaitAsync(TimeSpan.FromSeconds(10));

        Assert.Equal(mayUse, refused is null);
        Assert.Equal(250, flow[0], 6);
        Assert.Equal(mayUse ? 1 : 0, edges.Sentences.Length);
    }
}
