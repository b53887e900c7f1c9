using System.Collections.Frozen;
using System.Globalization;
using System.Xml.Linq;
using Batch.Flight.Plan;
using Batch.Sheets.Pictures;
using Batch.Sheets.Templates;
using CsCheck;

namespace Batch.Sheets.Tests;

public class PictureTests
{
    private static LegPlan.Planned Leg { get; } = (LegPlan.Planned)SampleWeek.Made.Plan.Legs[0];

    public static TheoryData<string> Pictures => [.. Drawn.Keys];

    private static PictureStyle LongWords { get; } = new()
    {
        WeightUnit = "kg",
        Words = new Dictionary<string, string> { ["Zero fuel"] = "Ohne Kraftstoff", ["outside"] = "außerhalb", ["in aft of datum"] = "in hinter Bezug" }
            .ToFrozenDictionary(StringComparer.Ordinal)
    };

    private static Dictionary<string, string> Drawn { get; } = new(StringComparer.Ordinal)
    {
        ["profile"] = ProfilePicture.Of(Leg).Usual.Html,
        ["profile of a leg without fixes"] = ProfilePicture.Of((LegPlan.Planned)SampleWeek.Made.Plan.Legs[2]).Usual.Html,
        ["profile of a leg with thirty fixes"] = ProfilePicture.Of(ManyFixes(30, 1)).Usual.Html,
        ["profile of a long leg with a steep climb"] = ProfilePicture.Of(ManyFixes(4, 6)).Usual.Html,
        ["envelope"] = EnvelopePicture.Of(Leg)?.Usual.Html ?? "",
        ["envelope with states close together"] =
            EnvelopePicture.Of(Leg with { Load = Leg.Load with { Landing = Leg.Load.Takeoff, ZeroFuel = Leg.Load.Takeoff } })?.Usual.Html ?? "",
        ["envelope with a state outside"] = EnvelopePicture.Of(Outside())?.Usual.Html ?? "",
        ["envelope with every state outside, in long words"] = EnvelopePicture.Of(Leg with
        {
            Load =
            Leg.Load with { Tests = [.. Leg.Load.Tests.Select(test => test with { IsInside = false })] }
        })?.Draw(LongWords).Html ?? "",
        ["sketch"] = RouteSketch.Of(Leg, Airports).Usual.Html,
        ["sketch of a leg without fixes"] = RouteSketch.Of((LegPlan.Planned)SampleWeek.Made.Plan.Legs[2], Airports).Usual.Html,
        ["sketch of a leg with thirty fixes"] = RouteSketch.Of(ManyFixes(30, 1), Airports).Usual.Html,
        ["sketch over the date line"] =
            RouteSketch.Of(Between((-17.8, 177.4), (-13.8, -172.0), ("DATEA", -16.5, 179.9), ("DATEB", -15.6, -178.0)), Airports).Usual.Html,
        ["sketch past the pole"] = RouteSketch.Of(Between((86, 20), (87, -150), ("POLAR", 89.6, 80)), Airports).Usual.Html,
        ["sketch of a flight that goes nowhere"] = RouteSketch.Of(Nowhere(), Airports).Usual.Html,
        ["duty"] = DutyBar.Of(DutyBarTests.Day).Usual.Html,
        ["duty through the night over its limit"] = DutyBar.Of(DutyBarTests.Night).Usual.Html,
        ["duty without flights, limit or rest"] =
            DutyBar.Of(DutyBarTests.Day with { Flights = [], Limit = null, RestBefore = null, RestAfter = null }).Usual.Html,
        ["duty of no length at midnight"] = DutyBar.Of(DutyBarTests.Day with
        {
            Report = Instant.FromUtc(2026, 12, 7, 5, 0),
            Release = Instant.FromUtc(2026, 12, 7, 5, 0),
            Limit = Instant.FromUtc(2026, 12, 7, 5, 0)
        }).Usual.Html,
        ["fuel"] = FuelBars.Of(Leg.Fuel).Usual.Html,
        ["fuel that is short"] = FuelBars.Of(Leg.Fuel with { Aboard = new Pounds(500) }).Usual.Html,
        ["no fuel at all"] = FuelBars.Of(Leg.Fuel with
        {
            Taxi = default,
            Trip = default,
            Contingency = default,
            Alternate = default,
            FinalReserve = default,
            Aboard = default,
            Most = default
        }).Usual.Html,
    };

    [Theory]
    [MemberData(nameof(Pictures))]
    public void A_picture_is_well_formed_and_has_a_title(string name)
    {
        var svg = XDocument.Parse(Drawn[name]).Root;
        Assert.Equal("svg", svg?.Name.LocalName);
        Assert.False(string.IsNullOrWhiteSpace(svg?.Elements().First(element => element.Name.LocalName == "title").Value));
    }

    [Fact]
    public void The_line_of_what_is_required_strikes_no_figure()
    {
        var required = Leg.Fuel.Required.Value;
        Assert.All(Enumerable.Range(-20, 41).Select(k => Leg.Fuel with { Aboard = new Pounds(required + (20 * k)) }), fuel =>
        {
            var svg = XDocument.Parse(FuelBars.Of(fuel).Usual.Html).Root ?? throw new InvalidOperationException();
            var line = double.Parse(
                svg.Elements().Single(element => element.Attribute("stroke-dasharray") is not null).Attribute("x1")?.Value ?? "", CultureInfo.InvariantCulture);
            Assert.DoesNotContain(Texts(svg.ToString()), text => text.Left < line && line < text.Right && char.IsDigit(text.Text[0]));
        });
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void No_text_of_a_picture_covers_another(string name)
    {
        var texts = Texts(Drawn[name]);
        Assert.NotEmpty(texts);
        var covered = texts.SelectMany((a, k) => texts.Skip(k + 1).Where(b => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom)
            .Select(b => a.Text + " / " + b.Text));
        Assert.Empty(covered);
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Every_text_stands_inside_its_picture(string name)
    {
        var svg = XDocument.Parse(Drawn[name]).Root ?? throw new InvalidOperationException(name);
        var (width, height) = (Number(svg, "width"), Number(svg, "height"));
        Assert.All(Texts(Drawn[name]),
            text => Assert.True(text.Left >= -1 && text.Right <= width + 1 && text.Top >= -1 && text.Bottom <= height + 1, text.ToString()));
    }

    [Fact]
    public void A_state_outside_the_envelope_says_so_in_words() =>
        Assert.Contains("Takeoff – outside", Drawn["envelope with a state outside"], StringComparison.Ordinal);

    [Fact]
    public void No_envelope_is_drawn_where_moments_are_not_known() => Assert.Null(EnvelopePicture.Of(Leg with { Load = Leg.Load with { HasMoments = false } }));

    [Fact]
    public void Every_word_of_a_picture_can_be_put_in_another_language()
    {
        var style = new PictureStyle { WeightUnit = "kg", Words = PictureWords.All.ToFrozenDictionary(word => word, _ => "§", StringComparer.Ordinal) };
        var cold = Leg with
        {
            Profile =
            Leg.Profile with { Slices = [.. Leg.Profile.Slices.Select(slice => slice with { Air = slice.Air with { Temperature = new Celsius(9) } })] }
        };
        Picture?[] all = [ProfilePicture.Of(Leg), ProfilePicture.Of(cold), EnvelopePicture.Of(Outside()), FuelBars.Of(Leg.Fuel), RouteSketch.Of(Leg, Airports),
            DutyBar.Of(DutyBarTests.Day), DutyBar.Of(DutyBarTests.Night)];
        var texts = all.SelectMany(picture => XDocument.Parse(picture?.Draw(style).Html ?? "").Descendants())
            .Where(element => element.Name.LocalName is "text" or "title").Select(element => element.Value).ToArray();
        Assert.Contains(texts, text => text.Contains('§', StringComparison.Ordinal));
        Assert.All(texts, text => Assert.DoesNotMatch("[a-z]{3,}|lb", text));
    }

    [Fact]
    public void Weights_in_kilograms_are_those_in_pounds()
    {
        var kilograms = EnvelopePicture.Of(Leg)?.Draw(new PictureStyle { WeightUnit = "kg" }).Html ?? "";
        Assert.Contains(Math.Round(Leg.Load.Takeoff.Weight.Value * 0.45359237).ToString("N0", CultureInfo.InvariantCulture) + " kg", kilograms,
            StringComparison.Ordinal);
        Assert.DoesNotContain("lb", kilograms, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pass")]
    [InlineData("caution")]
    [InlineData("fail")]
    [InlineData("unplanned")]
    [InlineData("note")]
    public void Every_state_has_a_shape_of_its_own(string code)
    {
        var others = new[] { "pass", "caution", "fail", "unplanned", "note" }.Where(other => other != code).Select(Shapes);
        Assert.DoesNotContain(Shapes(code), others);
    }

    [Fact]
    public void Labels_in_a_column_keep_their_distance_and_order() =>
        Gen.Double[0, 200].Array[1, 5].Sample(wishes =>
        {
            Array.Sort(wishes);
            var places = LabelPlaces.Spread(wishes, 30, 0, 200);
            return places.Zip(places.Skip(1)).All(pair => pair.Second - pair.First >= 30 - 1e-9) && places.All(place => place <= 200);
        });

    [Fact]
    public void Labels_in_a_row_never_touch() =>
        Gen.Double[0, 500].Array[1, 25].Sample(middles =>
        {
            Array.Sort(middles);
            var labels = middles.Select(middle => (middle, 40.0)).ToArray();
            var rows = LabelPlaces.Rows(labels, 5);
            return rows.Select((row, k) => (row, k)).GroupBy(pair => pair.row)
                .All(group => group.Zip(group.Skip(1)).All(pair => middles[pair.Second.k] - middles[pair.First.k] >= 45 - 1e-9));
        });

    [Fact]
    public void An_axis_marks_round_values_only() =>
        Gen.Select(Gen.Double[-1000, 1000], Gen.Double[0.5, 20_000]).Sample((from, length) =>
        {
            var axis = new Axis(from, from + length, 0, 100);
            var marks = axis.Marks(5).ToArray();
            return marks.Length is >= 1 and <= 12 && marks.All(mark => axis.At(mark) is >= -0.001 and <= 100.001);
        });

    private static ImmutableSortedDictionary<string, Flight.Fleet.Airport> Airports => SampleWeek.Made.Plan.Input.Airports;

    /// <summary>The sample leg between two other places, without alternates.</summary>
    internal static LegPlan.Planned Between((double Lat, double Lon) from, (double Lat, double Lon) to, params (string Ident, double Lat, double Lon)[] fixes)
    {
        var (start, end) = (Leg.From with { Position = new Flight.Earth.GeoPoint(from.Lat, from.Lon) },
            Leg.To with { Position = new Flight.Earth.GeoPoint(to.Lat, to.Lon) });
        return SampleLeg.Planned(Leg.Leg, start, end, [.. fixes.Select(fix => (fix.Ident, fix.Lat, fix.Lon, (double?)null))]) with { Alternates = [] };
    }

    private static LegPlan.Planned Nowhere() => Leg with
    {
        Alternates = [],
        To = Leg.From,
        Route = Leg.Route with { Segments = [Leg.Route.Segments[0] with { Path = new Flight.Earth.GeodesicPath(Leg.From.Position, Leg.From.Position) }] }
    };

    private static string Shapes(string code) => string.Join(' ', XDocument.Parse(StateMark.Of(code, "x").Html).Root?.Elements().Where(element =>
        element.Name.LocalName != "title").Select(element => element.Name.LocalName + element.Attribute("points")?.Value + element.Attribute("d")?.Value
            + element.Attribute("fill")?.Value.Replace("none", "open", StringComparison.Ordinal)) ?? []);

    private static LegPlan.Planned ManyFixes(int count, double stretch)
    {
        var (from, to) = (Leg.From,
            Leg.To with { Position = new Flight.Earth.GeoPoint(Leg.To.Position.LatitudeDeg, Leg.From.Position.LongitudeDeg + (stretch * 3.7)) });
        var fixes = Enumerable.Range(1, count).Select(k => ("FIX" + k.ToString("00", CultureInfo.InvariantCulture), 41.3 + (0.8 * k / (count + 1)),
            from.Position.LongitudeDeg + (stretch * 3.7 * k / (count + 1)), (double?)(3_000 + (k * 137 % 7 * 800))));
        return SampleLeg.Planned(Leg.Leg, from, to, [.. fixes]);
    }

    private static LegPlan.Planned Outside()
    {
        var tests = Leg.Load.Tests.Select(test => test.When == "takeoff" ? test with { IsInside = false } : test);
        return Leg with { Load = Leg.Load with { Takeoff = new WeightAndBalance(new Pounds(9_400), new PoundInches(9_400 * 206.5)), Tests = [.. tests] } };
    }

    private static TextBox[] Texts(string svg) => [.. XDocument.Parse(svg).Descendants().Where(element => element.Name.LocalName == "text").Select(Box)];

    private static TextBox Box(XElement text)
    {
        var size = double.Parse(text.Attribute("font-size")?.Value.Replace("px", "", StringComparison.Ordinal) ?? "10", CultureInfo.InvariantCulture);
        var width = text.Value.Length * size * 0.56;
        var x = Number(text, "x");
        var left = text.Attribute("text-anchor")?.Value switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
        return new TextBox(text.Value, left, left + width, Number(text, "y") - (size * 0.72), Number(text, "y") + (size * 0.1));
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)?.Value ?? "", CultureInfo.InvariantCulture);

    private sealed record TextBox(string Text, double Left, double Right, double Top, double Bottom);
}
