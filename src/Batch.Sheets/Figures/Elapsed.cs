using System.Globalization;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Figures;

/// <summary>A length of time.</summary>
/// <param name="Time">The time.</param>
internal sealed record Elapsed(Duration Time) : IPrintable
{
    /// <summary>What went before it in a column; the column is rounded from its start, so that its lines add up to their total.</summary>
    public Duration Before { get; init; }

    [Value("The time in minutes, a bare number")]
    public double Number => Time.TotalMinutes;

    public static Elapsed? Of(Duration? time) => time is { } known ? new Elapsed(known) : null;

    /// <summary>Hours and minutes, such as <c>1:07</c>, rounded to the minute.</summary>
    public string HoursMinutes() => HoursMinutes((long)Rounded(0));

    /// <summary>Whole minutes as hours and minutes, with a true minus sign.</summary>
    /// <param name="minutes">The minutes.</param>
    public static string HoursMinutes(long minutes) =>
        string.Create(CultureInfo.InvariantCulture, $"{(minutes < 0 ? "\u2212" : "")}{Math.Abs(minutes) / 60}:{Math.Abs(minutes) % 60:00}");

    /// <summary>Minutes, such as <c>67</c> or <c>67.5</c>.</summary>
    public string Minutes(int decimals, CultureInfo? culture = null) => Quantity.Text(Rounded(decimals), decimals, isSigned: false, culture);

    /// <summary>Such as <c>1:07</c>.</summary>
    public override string ToString() => HoursMinutes();

    private double Rounded(int decimals) =>
        Math.Round((Before + Time).TotalMinutes, decimals, MidpointRounding.AwayFromZero) - Math.Round(Before.TotalMinutes, decimals,
            MidpointRounding.AwayFromZero);
}
