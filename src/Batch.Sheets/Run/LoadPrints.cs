using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Batch.Flight.Week;

namespace Batch.Sheets.Run;

/// <summary>Fingerprints of who and what flies on a leg, so that a change can be seen without the names.</summary>
internal sealed class LoadPrints
{
    private readonly ILookup<string, ManifestLine> _manifest;
    private readonly ILookup<string, CargoLine> _cargo;

    /// <summary>Sorts the lines of a week by trip, once for all its legs.</summary>
    public LoadPrints(OperatorWeek week)
    {
        _manifest = week.Manifest.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
        _cargo = week.Cargo.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>SHA-256 over the passenger and cargo lines of a leg, in book order; lower-case hexadecimal.</summary>
    public string Of(LegKey leg)
    {
        var text = new StringBuilder();
        foreach (var line in _manifest[leg.Trip].Where(line => line.Legs.Contains(leg.Number)))
            Add(text, line.Name, line.Category?.ToString() ?? "", Written(line.Weight?.Value), Written(line.Bags?.Value), Written(line.BagCount), line.Seat,
                line.Notes);
        foreach (var line in _cargo[leg.Trip].Where(line => line.Legs.Contains(leg.Number)))
            Add(text, "cargo", line.What, Written(line.Weight.Value), line.Station, line.Notes);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static void Add(StringBuilder text, params ReadOnlySpan<string> cells)
    {
        foreach (var cell in cells) text.Append(cell).Append('\u001f');
        text.Append('\u001e');
    }

    private static string Written(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
