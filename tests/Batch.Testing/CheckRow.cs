using System.Globalization;

namespace Batch.Testing;

/// <summary>One row of a <see cref="CheckFile"/>; the first column is its id.</summary>
public sealed class CheckRow
{
    private readonly string _file;
    private readonly string[] _columns;
    private readonly string[] _fields;

    internal CheckRow(string file, string[] columns, string[] fields) => (_file, _columns, _fields) = (file, columns, fields);

    /// <summary>The first column.</summary>
    public string Id => _fields[0];

    /// <summary>The text of a column.</summary>
    /// <exception cref="KeyNotFoundException">The file has no such column.</exception>
    public string this[string column] => Array.IndexOf(_columns, column) is var at and >= 0
        ? _fields[at]
        : throw new KeyNotFoundException($"{_file} has no column '{column}'; it has {string.Join(", ", _columns)}.");

    /// <summary>Whether a column holds anything.</summary>
    public bool Has(string column) => this[column].Length > 0;

    /// <summary>The number in a column.</summary>
    /// <exception cref="FormatException">It holds no number.</exception>
    public double Number(string column) => double.TryParse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
        ? value
        : throw new FormatException($"{_file}, row {Id}: '{this[column]}' in column {column} is not a number.");

    /// <summary>The number in a column, or nothing where it is empty.</summary>
    public double? NumberOrNothing(string column) => Has(column) ? Number(column) : null;

    /// <summary>Half a unit of the last printed digit of a number in a column.</summary>
    public double HalfDigit(string column) => HalfDigitOf(this[column]);

    /// <summary>Half a unit of the last printed digit of a number, with the rounding of its own decimal places allowed for.</summary>
    /// <param name="text">A number as printed, such as 0.50 (gives 0.005).</param>
    public static double HalfDigitOf(string text)
    {
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var digits = point < 0 ? 0 : text.Length - point - 1;
        return 0.5 * Math.Pow(10, -digits) * (1 + 1e-6) + 1e-12;
    }

    /// <summary>The parts of a column written as <c>name=value; name=value</c>.</summary>
    public IReadOnlyDictionary<string, string> Parts(string column) => this[column]
        .Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Where(p => p.Contains('=', StringComparison.Ordinal))
        .Select(p => p.Split('=', 2))
        .ToDictionary(p => p[0].Trim(), p => p[1].Trim(), StringComparer.Ordinal);

    /// <summary>The row with its column names, for failures.</summary>
    public override string ToString() => $"{_file}: " + string.Join("; ", _columns.Zip(_fields, (c, f) => $"{c}={f}"));
}
