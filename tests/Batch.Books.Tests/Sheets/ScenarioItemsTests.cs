using Batch.Books.Tests.Support;
using Batch.Flight.Week;

namespace Batch.Books.Tests.Sheets;

/// <summary>The operator's own scenarios on the Operator sheet.</summary>
public sealed class ScenarioItemsTests
{
    private static OperatorWeek Read(string item, object value) => GoodBooks.Read((op, _) => op.Add("Operator", item, value));

    [Fact]
    public void The_unit_of_an_amount_tells_what_it_is_added_to()
    {
        var scenario = Assert.Single(Read("Scenario Hot and heavy", "12 °C, 25 kt, 10 %, 45 min").Operator.Scenarios);
        Assert.Equal("hot-and-heavy", scenario.Name);
        Assert.Equal((12, 25, 1.1, Duration.FromMinutes(45)), (scenario.WarmerC, scenario.Headwind.Value, scenario.PersonFactor, scenario.Later));
        Assert.Equal("temperature 12 °C higher, headwind 25 kt stronger on every course, every person 10 % heavier, every leg 45 min later", scenario.Text);
    }

    [Theory]
    [InlineData("18 °F", 10, 0, 1, 0)]
    [InlineData("-15 °C;1 h", -15, 0, 1, 60)]
    [InlineData("37.04 km/h", 0, 20, 1, 0)]
    [InlineData("10 %,2.5 °C", 2.5, 0, 1.1, 0)]
    public void Units_are_those_of_the_books(string value, double warmerC, double headwindKt, double factor, double laterMin)
    {
        var scenario = Assert.Single(Read("Scenario: own", value).Operator.Scenarios);
        Assert.Equal("own", scenario.Name);
        Assert.Equal(warmerC, scenario.WarmerC, 9);
        Assert.Equal(headwindKt, scenario.Headwind.Value, 9);
        Assert.Equal(factor, scenario.PersonFactor, 9);
        Assert.Equal(Duration.FromMinutes(laterMin), scenario.Later);
    }

    [Theory]
    [InlineData("Scenario own", "12", "'12', which is not an amount")]
    [InlineData("Scenario own", "12 °C, 5 lb", "'5 lb', which is not an amount")]
    [InlineData("Scenario own", "12 °C, 5 °C", "'5 °C', which is not an amount that can be added, or stands twice")]
    [InlineData("Scenario own", "400 kt", "'400 kt', which is not an amount")]
    [InlineData("Scenario own", "0 kt", "adds nothing")]
    [InlineData("Scenario", "10 kt", "needs a name")]
    [InlineData("Scenario all", "10 kt", "cannot be called all")]
    public void What_cannot_be_read_is_said_at_its_cell_and_left_out(string item, string value, string said)
    {
        var week = Read(item, value);
        Assert.Empty(week.Operator.Scenarios);
        var problem = Assert.Single(week.Problems, problem => problem.Text.Contains(said, StringComparison.Ordinal));
        Assert.Equal(State.Caution, problem.State);
        Assert.Contains("/Operator/", problem.Cell, StringComparison.Ordinal);
        Assert.Equal(3, week.Legs.Length);
    }

    [Fact]
    public void A_name_counts_once()
    {
        var week = GoodBooks.Read((op, _) => op.Add("Operator", "Scenario own", "10 kt").Add("Operator", "scenario OWN", "20 kt"));
        Assert.Equal(10, Assert.Single(week.Operator.Scenarios).Headwind.Value);
        Assert.Single(week.Problems, problem => problem.Text.Contains("the scenario own stands twice", StringComparison.Ordinal));
    }

    [Fact]
    public void One_of_the_operator_stands_in_for_a_known_one_of_the_same_name()
    {
        var known = Scenario.Of(Read("Scenario hot", "15 °C").Operator);
        Assert.Equal(["hot", "headwind", "heavy", "late"], known.Select(scenario => scenario.Name));
        Assert.Equal(15, known[0].WarmerC);
        Assert.Equal("own", Scenario.Of(Read("Scenario own", "15 kt").Operator)[^1].Name);
    }
}
