using System.Globalization;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Figures;

/// <summary>A length of time.</summary>
/// <param name="Time">The time.</param>
internal sealed record Elapsed(Duration Time) : IPrintable
{
    [Value("The time in minutes, a bare number")]
    public double Number => Time.TotalMinutes;

    public static Elapsed? Of(Duration? time) => time is { } known ? new Elapsed(known) : null;

    /// <summary>Hours and minutes, such as <c>1:07</c>, rounded to the minute.</summary>
    public string HoursMinutes()
    {
        var minutes = (long)Math.Round(Time.TotalMinutes, MidpointRounding.AwayFromZero);
        var text = string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(minutes) / 60}:{Math.Abs(minutes) % 60:00}");
        return minutes < 0 ? "\u2212" + text : text;
    }

    /// <summary>Minutes, such as <c>67</c> or <c>67.5</c>.</summary>
    public string Minutes(int decimals, CultureInfo? culture = null) => Quantity.Text(Math.Round(Time.TotalMinutes, decimals, MidpointRounding.AwayFromZero), decimals, isSigned: false, culture);

    /// <summary>Such as <c>1:07</c>.</summary>
    public override string ToString() => HoursMinutes();
}
