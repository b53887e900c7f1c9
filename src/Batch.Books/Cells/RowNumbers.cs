using System.Globalization;

namespace Batch.Books.Cells;

/// <summary>Numbers of rows in words.</summary>
internal static class RowNumbers
{
    private const int MostNamed = 12;

    /// <summary>
    /// Rising numbers with those that follow each other drawn together, such as <c>3-5, 9</c>; what is beyond the twelfth is <c>and more</c>.
    /// </summary>
    public static string Listed(IReadOnlyList<int> numbers)
    {
        var ranges = Ranges(numbers).ToArray();
        return string.Join(", ", ranges.Take(MostNamed)) + (ranges.Length > MostNamed ? " and more" : "");
    }

    private static IEnumerable<string> Ranges(IReadOnlyList<int> numbers)
    {
        for (var i = 0; i < numbers.Count; i++)
        {
            var first = numbers[i];
            while (i + 1 < numbers.Count && numbers[i + 1] == numbers[i] + 1) i++;
            yield return string.Create(CultureInfo.InvariantCulture, $"{first}")
                + (numbers[i] > first ? string.Create(CultureInfo.InvariantCulture, $"-{numbers[i]}") : "");
        }
    }
}
