using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Batch.Post.Reading;

/// <summary>Reads the facts of a planned leg.</summary>
internal static class FactsReader
{
    /// <summary>What a sheet prints besides the facts that have a name of their own.</summary>
    private static readonly ImmutableArray<string> Printed =
        ["log", "alternates", "runway", "cgIn", "cgSpreadIn", "stations", "options", "fuelLb", "weightsLb", "assumptions", "notes", "setting", "nightMin"];

    public static LegFacts Read(JsonElement leg)
    {
        var weights = leg.GetProperty("weightsLb");
        var runway = leg.GetProperty("runway");
        return new LegFacts
        {
            Trip = leg.Text("trip"),
            Leg = leg.GetProperty("leg").GetInt32(),
            Aircraft = leg.Text("aircraft"),
            From = leg.Text("from"),
            To = leg.Text("to"),
            FromZone = leg.Text("fromZone"),
            ToZone = leg.Text("toZone"),
            OffBlocks = RecordReader.Minute(leg, "offBlocksUtc") ?? throw new KeyNotFoundException("offBlocksUtc"),
            OnBlocks = RecordReader.Minute(leg, "onBlocksUtc") ?? throw new KeyNotFoundException("onBlocksUtc"),
            Captain = leg.Text("captain"),
            SecondPilot = leg.Text("secondPilot"),
            Passengers = leg.GetProperty("passengers").GetInt32(),
            Load = leg.Text("loadSha256"),
            Route = leg.Text("route"),
            LevelFt = Whole(leg, "levelFt"),
            Alternates = string.Join(", ", new[] { leg.Text("alternate"), leg.Text("secondAlternate") }.Where(ident => ident.Length > 0)),
            BlockFuelLb = Whole(leg.GetProperty("fuelLb"), "aboard"),
            ZeroFuelLb = Whole(weights, "zeroFuel"),
            TakeoffLb = Whole(weights, "takeoff"),
            LandingLb = Whole(weights, "landing"),
            DepartureRunway = runway.GetProperty("departure").Text("ident"),
            ArrivalRunway = runway.GetProperty("arrival").Text("ident"),
            State = leg.Text("state"),
            Failing = string.Join(", ", Failures(leg).Select(finding => finding.Text("check")).Distinct(StringComparer.Ordinal)),
            Override = leg.Text("override"),
            Remarks = leg.Text("remarks"),
            Details = Details(leg),
        };
    }

    /// <summary>The findings that fail.</summary>
    public static IEnumerable<JsonElement> Failures(JsonElement leg) => leg.GetProperty("findings").EnumerateArray()
        .Where(finding => finding.Text("state") == "fail");

    private static int Whole(JsonElement from, string name) => (int)Math.Round(from.GetProperty(name).GetDouble(), MidpointRounding.AwayFromZero);

    private static string Details(JsonElement leg)
    {
        var text = new StringBuilder();
        foreach (var name in Printed)
        {
            if (leg.TryGetProperty(name, out var value)) text.Append(value.GetRawText()).Append('\n');
        }

        foreach (var finding in leg.GetProperty("findings").EnumerateArray()) text.Append(finding.Text("check")).Append(finding.Text("text")).Append('\n');
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..16];
    }
}
