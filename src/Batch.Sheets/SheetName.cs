using System.Collections.Frozen;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Batch.Sheets;

/// <summary>File names for trips, persons and airports, whatever they are called.</summary>
public static class SheetName
{
    private const int Longest = 100; // ours: leaves room for folders and endings within the 255 bytes that file systems allow a name
    private const int KeptOfLong = 80;
    private const int DigitsOfHash = 16;

    // Names that Windows keeps for devices, with any ending: "Naming Files, Paths, and Namespaces", Microsoft, from memory.
    private static readonly FrozenSet<string> Devices =
        new[] { "CON", "PRN", "AUX", "NUL" }.Concat(Enumerable.Range(0, 10)
            .SelectMany(number => new[] { "COM" + number.ToString(CultureInfo.InvariantCulture), "LPT" + number.ToString(CultureInfo.InvariantCulture) }))
            .ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// A name fit for a file on any system: letters, figures, <c>-</c> and <c>_</c> stay, another character becomes <c>~</c> and its hexadecimal code, so that
    /// two names never meet unless they differ by case alone. A name that a system keeps for a device gets a <c>~</c> at its end; of a very long one the
    /// beginning is kept, then <c>~</c> and a hash of the whole.
    /// </summary>
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
        if (file.Length == 0) return "~";
        if (file.Length > Longest)
            return file.ToString(0, KeptOfLong) + "~" + Convert.ToHexStringLower(SHA256.HashData(Encoding.Unicode.GetBytes(name)))[..DigitsOfHash];
        var made = file.ToString();
        return Devices.Contains(made) ? made + "~" : made;
    }
}
