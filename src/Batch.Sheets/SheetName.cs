using System.Globalization;
using System.Text;

namespace Batch.Sheets;

/// <summary>File names for trips, persons and airports, whatever they are called.</summary>
public static class SheetName
{
    /// <summary>A name fit for a file on any system: letters, figures, <c>-</c> and <c>_</c> stay, another character becomes <c>~</c> and its hexadecimal code, so that two names never meet unless they differ by case alone.</summary>
    /// <param name="name">Name of the trip, person or airport.</param>
    public static string Of(string name)
    {
        var file = new StringBuilder(name.Length);
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_')
                file.Append(letter);
            else
                file.Append('~').Append(((int)letter).ToString("x4", CultureInfo.InvariantCulture));
        }
        return file.Length == 0 ? "~" : file.ToString();
    }
}
