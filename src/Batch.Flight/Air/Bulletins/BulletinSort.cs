using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>Tells what a pasted bulletin is.</summary>
public static partial class BulletinSort
{
    /// <summary>
    /// The kind of a bulletin: winds aloft where a line of altitudes begins with FT; a forecast where it begins with TAF or has a period of validity such as
    /// 2806/2912, or 121818 in the form of before 2008, behind station and time of issue; a report otherwise.
    /// </summary>
    /// <param name="text">The bulletin.</param>
    public static BulletinKind KindOf(string text) => text switch
    {
        _ when text.Split('\n').Any(l => WindsAloftColumns.Heads(l.ToUpperInvariant().TrimEnd()) is not null) => BulletinKind.WindsAloft,
        _ when Forecast().IsMatch(string.Join(' ', BulletinText.Groups(text))) => BulletinKind.Forecast,
        _ => BulletinKind.Report,
    };

    [GeneratedRegex("^\\s*(TAF\\b|[A-Z][A-Z0-9]{3}\\s+([0-9]{6}Z?\\s+)?[0-9]{4}/[0-9]{4}\\b|[A-Z][A-Z0-9]{3}\\s+[0-9]{6}Z\\s+[0-9]{6}\\b)",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Forecast();
}
