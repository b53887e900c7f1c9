using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Load;

/// <summary>The spread of outcomes if passengers sit elsewhere: rows of two seats at 130, 160 and 190 in.</summary>
public sealed class LoadSpreadTests
{
    private static readonly string[] RowNames = ["Row 1", "Row 2", "Row 3"];

    private static LoadSheet Sheet(params ImmutableArray<ManifestLine> passengers) => Loading.Of(Some.LoadRequest with { Passengers = passengers });

    [Fact]
    public void The_heaviest_sit_foremost_or_aftmost()
    {
        var sheet = Sheet(Some.Passenger(PersonCategory.Adult, 200), Some.Passenger(PersonCategory.Adult, 150), Some.Passenger(PersonCategory.Adult, 100));
        var spread = Assert.IsType<LoadSpread>(sheet.Spread);
        var bare = sheet.BasicEmpty.Moment.Value;
        Assert.Equal(bare + (200 * 130) + (150 * 130) + (100 * 160), spread.Forward.ZeroFuel.Moment.Value, 6);
        Assert.Equal(bare + (200 * 190) + (150 * 190) + (100 * 160), spread.Aft.ZeroFuel.Moment.Value, 6);
        Assert.Equal(sheet.ZeroFuel.Weight, spread.Aft.ZeroFuel.Weight);
        Assert.Equal(sheet.Takeoff.Moment.Value - sheet.ZeroFuel.Moment.Value, spread.Aft.Takeoff.Moment.Value - spread.Aft.ZeroFuel.Moment.Value, 6);
        Assert.Contains("maxima of rows not looked at", spread.Assumption, StringComparison.Ordinal);
    }

    [Fact]
    public void An_infant_moves_with_its_adult_and_a_pilot_keeps_the_pilot_seat()
    {
        var sheet = Loading.Of(Some.LoadRequest with
        {
            Aircraft = Some.LoadAircraft with { PilotsIncluded = 0 },
            Passengers = [Some.Passenger(PersonCategory.Adult, 150), Some.Passenger(PersonCategory.Infant, 20), Some.Passenger(PersonCategory.Adult, 160)],
        });
        var spread = Assert.IsType<LoadSpread>(sheet.Spread);
        Assert.Equal(sheet.BasicEmpty.Moment.Value + (190 * 100) + (330 * 130), spread.Forward.ZeroFuel.Moment.Value, 6);
    }

    [Fact]
    public void With_nobody_aboard_there_is_no_spread() => Assert.Null(Sheet().Spread);

    [Fact]
    public void A_load_that_is_in_limits_as_written_may_be_out_of_them_otherwise()
    {
        // 800 lb of passengers in rows 1 and 2; in rows 2 and 3 the centre of gravity lies 30 in x 800 lb further aft.
        var written = Enumerable.Range(0, 4).Select(seat => Some.Passenger(PersonCategory.Adult, 200, seat: seat < 2 ? "Row 1" : "Row 2"));
        var type = Some.LoadType with { Envelopes = [Some.Envelope(Flight.Fleet.EnvelopeCase.Takeoff, (5000, 130), (8000, 130), (8000, 145), (5000, 145))] };
        var sheet = Loading.Of(Some.LoadRequest with { Type = type, Passengers = [.. written] });
        Assert.All(sheet.Tests, test => Assert.True(test.IsInside));
        var spread = Assert.IsType<LoadSpread>(sheet.Spread);
        Assert.True(spread.Forward.IsInside);
        Assert.False(spread.Aft.IsInside);
        Assert.False(spread.StaysInside);
    }

    [Fact]
    public void Every_seating_lies_within_the_spread()
    {
        Gen.Select(Gen.Double[60, 250].Array[1, 6], Gen.Int[0, 2].Array[6]).Sample((weights, rows) =>
        {
            var sheet = Sheet([.. weights.Select((weight, i) => Some.Passenger(PersonCategory.Adult, weight, seat: RowNames[rows[i]]))]);
            var spread = Assert.IsType<LoadSpread>(sheet.Spread);
            Assert.InRange(sheet.ZeroFuel.Moment.Value, spread.Forward.ZeroFuel.Moment.Value - 1e-6, spread.Aft.ZeroFuel.Moment.Value + 1e-6);
        }, iter: 500);
    }
}
