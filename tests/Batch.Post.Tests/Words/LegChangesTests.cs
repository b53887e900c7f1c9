using Batch.Post.Words;

namespace Batch.Post.Tests.Words;

/// <summary>The words for every kind of change of a leg.</summary>
public sealed class LegChangesTests
{
    private static readonly LegFacts Was = SomePost.Facts();
    private static readonly PrintedWeight Kilograms = new("kg", 0.45359237);

    public static TheoryData<string, string> Kinds => new()
    {
        { "aircraft", "aircraft Q-HAA to Q-HAB" },
        { "departure", "departure XAND to XCOR" },
        { "destination", "destination XBEL to XDUN" },
        { "times", "off blocks 14:30 to 15:00, on blocks 15:02 to 15:32" },
        { "day", "off blocks Mon 7 Dec 14:30 to Tue 8 Dec 14:30, on blocks Mon 7 Dec 15:02 to Tue 8 Dec 15:02" },
        { "captain", "captain RIM to SOR" },
        { "second pilot added", "second pilot WEN added" },
        { "passengers", "passengers 3 to 4" },
        { "names", "names, weights, seats or notes in the manifest, or cargo" },
        { "route", "route AND V12 BEL to direct" },
        { "level", "level 21,000 to 19,000 ft" },
        { "alternate", "alternate XFEN to XCOR" },
        { "alternate dropped", "alternate XFEN dropped" },
        { "alternate added", "alternate XFEN to XFEN, XCOR" },
        { "runways", "departure runway 28 to 10, arrival runway 27 to 09" },
        { "fuel", "block fuel 1,240 to 1,320 lb" },
        { "weights", "zero-fuel weight 7,435 to 7,625 lb, takeoff weight 8,630 to 8,820 lb, landing weight 8,210 to 8,400 lb" },
        { "state", "state pass to fail (FUEL-03, WB-02)" },
        { "failing", "state pass to fail (FUEL-03), flown although it fails, because: \"the chief pilot agreed\"" },
        { "remarks", "remarks \"Gate 2, call ahead\" added" },
        { "details", "figures of the log, the winds, the runways or the notes" },
        { "several", "passengers 3 to 4, block fuel 1,240 to 1,320 lb" },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_change_is_said_in_words(string kind, string said) => Assert.Equal(said, string.Join(", ", Between(Was, Changed(kind))));

    [Fact]
    public void Nothing_is_said_where_nothing_changed() => Assert.Empty(Between(Was, SomePost.Facts()));

    [Fact]
    public void A_check_that_fails_besides_is_said()
    {
        var was = Was with { State = "fail", Failing = "FUEL-03" };
        Assert.Equal(["failing checks FUEL-03 to FUEL-03, WB-02"], Between(was, was with { Failing = "FUEL-03, WB-02" }).AsEnumerable());
        Assert.Equal(["the reason to fly it although it fails is withdrawn"], Between(was with { Override = "agreed" }, was).AsEnumerable());
    }

    [Fact]
    public void Every_fact_that_differs_is_said()
    {
        foreach (var property in typeof(LegFacts).GetProperties()
            .Where(property => property.CanWrite && property.Name is not (nameof(LegFacts.Trip) or nameof(LegFacts.Leg))))
        {
            var now = SomePost.Facts();
            object? other = property.GetValue(now) switch
            {
                int number => number + 1,
                Instant at => at + Duration.FromMinutes(1),
                string when property.Name.EndsWith("Zone", StringComparison.Ordinal) => "Asia/Tokyo",
                _ => "other",
            };
            property.SetValue(now, other);
            Assert.NotEmpty(Between(Was, now));
        }
    }

    [Fact]
    public void Remarks_of_many_lines_stay_on_one()
    {
        var said = Assert.Single(Between(Was, Was with { Remarks = "one\r\n\r\nBcc: x\n" + new string('a', 300) }));
        Assert.DoesNotContain('\n', said);
        Assert.StartsWith("remarks \"one Bcc: x aaa", said, StringComparison.Ordinal);
        Assert.InRange(said.Length, 100, 150);
    }

    /// <summary>The marks round a text tell its commas from those between changes, so it has none inside.</summary>
    [Fact]
    public void Quotation_marks_inside_a_remark_become_single_ones() =>
        Assert.Equal("remarks \"say 'hello', then wait\" added",
            Assert.Single(Between(Was with { Remarks = "" }, Was with { Remarks = "say \"hello\", then wait" })));

    private static LegFacts Changed(string kind) => kind switch
    {
        "aircraft" => Was with { Aircraft = "Q-HAB" },
        "departure" => Was with { From = "XCOR" },
        "destination" => Was with { To = "XDUN" },
        "times" => Was with { OffBlocks = Was.OffBlocks + Duration.FromMinutes(30), OnBlocks = Was.OnBlocks + Duration.FromMinutes(30) },
        "day" => Was with { OffBlocks = Was.OffBlocks + Duration.FromDays(1), OnBlocks = Was.OnBlocks + Duration.FromDays(1) },
        "captain" => Was with { Captain = "SOR" },
        "second pilot added" => Was with { SecondPilot = "WEN" },
        "passengers" => Was with { Passengers = 4, Load = "b2" },
        "names" => Was with { Load = "b2", Details = "d2" },
        "route" => Was with { Route = "", Details = "d2" },
        "level" => Was with { LevelFt = 19_000 },
        "alternate" => Was with { Alternates = "XCOR" },
        "alternate dropped" => Was with { Alternates = "" },
        "alternate added" => Was with { Alternates = "XFEN, XCOR" },
        "runways" => Was with { DepartureRunway = "10", ArrivalRunway = "09" },
        "fuel" => Was with { BlockFuelLb = 1320 },
        "weights" => Was with { ZeroFuelLb = 7625, TakeoffLb = 8820, LandingLb = 8400 },
        "state" => Was with { State = "fail", Failing = "FUEL-03, WB-02" },
        "failing" => Was with { State = "fail", Failing = "FUEL-03", Override = "the chief pilot agreed" },
        "remarks" => Was with { Remarks = "Gate 2,\ncall ahead" },
        "details" => Was with { Details = "d2" },
        "several" => Was with { Passengers = 4, BlockFuelLb = 1320 },
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no such kind"),
    };

    /// <summary>1,240 lb are 562.45 kg, 1,320 lb are 598.74 kg (1 lb = 0.45359237 kg).</summary>
    [Fact]
    public void Weights_are_said_in_the_unit_of_the_operator() =>
        Assert.Equal(["block fuel 562 to 599 kg"], LegChanges.Between(Was, Was with { BlockFuelLb = 1320 }, Kilograms).AsEnumerable());

    [Fact]
    public void A_pound_that_no_kilogram_shows_is_a_change_of_figures_only() =>
        Assert.Equal(["figures of the log, the winds, the runways or the notes"], LegChanges.Between(Was, Was with { BlockFuelLb = 1239 }, Kilograms).AsEnumerable());

    private static ImmutableArray<string> Between(LegFacts was, LegFacts now) => LegChanges.Between(was, now, PrintedWeight.Pounds);
}
