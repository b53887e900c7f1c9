using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Batch.Flight.Week;

namespace Batch.Sheets.Run;

/// <summary>A fingerprint of who and what flies on a leg, so that a change can be seen without the names.</summary>
internal static class LoadPrint
{
    /// <summary>SHA-256 over the passenger and cargo lines of a leg, in book order; lower-case hexadecimal.</summary>
    public static string Of(OperatorWeek week, LegKey leg)
    {
        var text = new StringBuilder();
        foreach (var line in week.Manifest.Where(line => IsOf(line.Trip, line.Legs, leg)))
            Add(text, line.Name, line.Category?.ToString() ?? "", Written(line.Weight?.Value), Written(line.Bags?.Value), Written(line.BagCount), line.Seat, line.Notes);
        foreach (var line in week.Cargo.Where(line => IsOf(line.Trip, line.Legs, leg)))
            Add(text, "cargo", line.What, Written(line.Weight.Value), line.Station, line.Notes);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static bool IsOf(string trip, LegSelection legs, LegKey leg) => string.Equals(trip, leg.Trip, StringComparison.OrdinalIgnoreCase) && legs.Contains(leg.Number);

    private static void Add(StringBuilder text, params ReadOnlySpan<string> cells)
    {
        foreach (var cell in cells) text.Append(cell).Append('\u001f');
        text.Append('\u001e');
    }

    private static string Written(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
