using System.Text.Json;

namespace Batch.EndToEnd.Tests;

/// <summary>Reads <c>run.json</c> in tests.</summary>
internal static class RunJson
{
    public static IEnumerable<JsonElement> Legs(this JsonElement run) => run.GetProperty("legs").EnumerateArray();

    public static string Key(this JsonElement leg) => $"{leg.GetProperty("trip").GetString()}/{leg.GetProperty("leg").GetRawText()}";

    public static string State(this JsonElement element) => element.GetProperty("state").GetString() ?? "";

    public static double Number(this JsonElement element, string name) => element.GetProperty(name).GetDouble();

    public static IEnumerable<JsonElement> Items(this JsonElement element, string name) => element.GetProperty(name).EnumerateArray();
}
