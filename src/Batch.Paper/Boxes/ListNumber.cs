using System.Globalization;

namespace Batch.Paper.Boxes;

/// <summary>Numbers of ordered lists as CSS Counter Styles 3 writes them.</summary>
internal static class ListNumber
{
    private static readonly (int Value, string Letters)[] Roman =
        [(1000, "m"), (900, "cm"), (500, "d"), (400, "cd"), (100, "c"), (90, "xc"), (50, "l"), (40, "xl"), (10, "x"), (9, "ix"), (5, "v"), (4, "iv"), (1, "i")];

    public static string Text(int number, string style) => style switch
    {
        "lower-alpha" when number > 0 => Letters(number),
        "upper-alpha" when number > 0 => Letters(number).ToUpperInvariant(),
        "lower-roman" when number is > 0 and < 4000 => Numeral(number),
        "upper-roman" when number is > 0 and < 4000 => Numeral(number).ToUpperInvariant(),
        _ => number.ToString(CultureInfo.InvariantCulture),
    };

    private static string Letters(int number)
    {
        var text = "";
        for (; number > 0; number = (number - 1) / 26) text = (char)('a' + (number - 1) % 26) + text;
        return text;
    }

    private static string Numeral(int number)
    {
        var text = "";
        foreach (var (value, letters) in Roman)
        {
            for (; number >= value; number -= value) text += letters;
        }

        return text;
    }
}
