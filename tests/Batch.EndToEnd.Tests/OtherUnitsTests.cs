using System.Globalization;
using System.Text.Json;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>
/// The whole sample in other units gives the same answers: no figure is read in the wrong unit, and none hangs on the last digit of a conversion.
/// </summary>
public sealed class OtherUnitsTests
{
    private const double Pound = 0.45359237;
    private const double Gallon = 3.785411784;

    /// <summary>Other unit and number in it, by the unit of the sample's headers. Factors: NIST SP 811 (2008), appendix B.8.</summary>
    private static readonly Dictionary<string, (string Unit, Func<double, double> Number)> Others = new(StringComparer.Ordinal)
    {
        ["lb"] = ("kg", number => number * Pound),
        ["lb/h"] = ("kg/h", number => number * Pound),
        ["lb/USG"] = ("kg/L", number => number * Pound / Gallon),
        ["/USG"] = ("/L", number => number / Gallon),
        ["ft"] = ("m", number => number * 0.3048),
        ["NM"] = ("km", number => number * 1.852),
        ["kt"] = ("km/h", number => number * 1.852),
        ["in"] = ("mm", number => number * 25.4),
        ["h"] = ("min", number => number * 60),
        ["min"] = ("s", number => number * 60),
        ["°C"] = ("°F", number => (number * 1.8) + 32),
    };

    [Fact]
    public void The_sample_in_metres_kilograms_and_degrees_Fahrenheit_gives_the_same_answers()
    {
        using var folder = new TemporaryFolder();
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples/csv"), folder.Path);
        var sample = Checked(folder.Path);
        var converted = Directory.EnumerateFiles(folder.Path, "*.csv", SearchOption.AllDirectories).Sum(Convert);
        Assert.InRange(converted, 10_000, int.MaxValue);
        Assert.Equal(sample, Checked(folder.Path));
    }

    private static string[] Checked(string folder)
    {
        var (status, output, _) = SampleRun.Run("check", Path.Combine(folder, "week"), Path.Combine(folder, "operator"), "--json", "--no-remedies");
        Assert.Equal(1, status);
        return [.. JsonDocument.Parse(output).RootElement.GetProperty("legs").EnumerateArray().Select(leg => leg.GetRawText())];
    }

    private static int Convert(string file)
    {
        var rows = CsvCells.Read(File.ReadAllText(file));
        var headers = rows[1];
        var converted = 0;
        for (var column = 0; column < headers.Count; column++)
        {
            if (headers[column].Split(" [") is not [var name, var unit] || !Others.TryGetValue(unit.TrimEnd(']'), out var other)) continue;
            headers[column] = $"{name} [{other.Unit}]";
            foreach (var row in rows.Skip(2))
            {
                if (row.Count <= column || !double.TryParse(row[column], NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) continue;
                // A difference of temperatures has no zero of its own.
                row[column] = (name.Contains("ISA deviation", StringComparison.Ordinal) ? number * 1.8 : other.Number(number))
                    .ToString("R", CultureInfo.InvariantCulture);
                converted++;
            }
        }

        CsvCells.Write(file, rows);
        return converted;
    }
}
