using System.Collections.Frozen;
using System.Globalization;
using Batch.Sheets.Figures;
using Batch.Sheets.Pictures;
using NodaTime.Text;
using Scriban;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <content>The functions by which a template chooses its language.</content>
internal static partial class UnitFunctions
{
    private static readonly string[] WeightUnits = ["kg", "lb"];

    [FunctionText("Writes numbers and days from here on in the manner of a language, such as {{ culture \"de-DE\" }}; writes nothing itself")]
    public static object? Culture(TemplateContext context, string? name = null)
    {
        try
        {
            context.PushCulture(CultureInfo.GetCultureInfo(name ?? "", predefinedOnly: true));
            return null;
        }
        catch (CultureNotFoundException)
        {
            throw new ValueError(context.CurrentSpan, $"The language `{name}` is not known; write it as in `de-DE`.");
        }
    }

    [FunctionText("The UTC date of a time of day, by a pattern such as \"ddd d MMM\"; 2026-12-07 without one")]
    public static string UtcDate(TemplateContext context, object? value = null, string pattern = "uuuu-MM-dd") => value switch
    {
        null => NotKnown,
        ClockTime clock => Date(context, clock.InUtc.Date, pattern),
        _ => throw Wrong(context.CurrentSpan, value, "utc_date", "a time of day"),
    };

    [FunctionText("The local date of a time of day, by a pattern such as \"ddd d MMM\"; 2026-12-07 without one")]
    public static string LocalDate(TemplateContext context, object? value = null, string pattern = "uuuu-MM-dd") => value switch
    {
        null => NotKnown,
        ClockTime clock => Date(context, clock.Local.Date, pattern),
        _ => throw Wrong(context.CurrentSpan, value, "local_date", "a time of day"),
    };

    [FunctionText("A picture with weights in lb or kg, and with words of your own in place of its English ones, such as {{ leg.plan.route_picture | draw \"kg\" { \"true north\": \"Nord\" } }}")]
    public static object? Draw(TemplateContext context, object? value = null, string unit = "lb", ScriptObject? words = null)
    {
        if (value is null)
            return null;
        if (value is not Picture picture)
            throw Wrong(context.CurrentSpan, value, "draw", "a picture");
        if (!WeightUnits.Contains(unit))
            throw ValueError.Unknown(context.CurrentSpan, $"Pictures write weights in `lb` or `kg`, not in `{unit}`", unit, WeightUnits);
        foreach (var word in words?.Keys ?? [])
        {
            if (!PictureWords.All.Contains(word))
                throw ValueError.Unknown(context.CurrentSpan, $"No picture writes `{word}`", word, PictureWords.All);
        }
        return picture.Draw(new PictureStyle
        {
            Culture = context.CurrentCulture,
            WeightUnit = unit,
            Words = (words ?? []).ToFrozenDictionary(pair => pair.Key, pair => pair.Value?.ToString() ?? "", StringComparer.Ordinal),
        });
    }

    [FunctionText("What a finding requires or has, with its unit, or an English text with amounts in it; pounds are written as kilograms. With the margin of a finding its text agrees with its figures, such as {{ finding.text | metric finding.margin }}")]
    public static string Metric(TemplateContext context, object? value = null, object? margin = null) => value switch
    {
        null => NotKnown,
        Quantity { Kind: QuantityKind.Plain, PlainUnit: "lb" } pounds => pounds.Text(Pounds.KilogramsPerPound, 0, context.CurrentCulture) + " kg",
        Quantity quantity => quantity.ToString(context.CurrentCulture),
        string text => AmountsInText.Rewritten(text, context.CurrentCulture, Figures(margin)),
        _ => throw Wrong(context.CurrentSpan, value, "metric", "a number or a text"),
    };

    [FunctionText("A text in words of your own, given as { \"takeoff\": \"Start\" }; as it is where they do not hold it")]
    public static object? Translate(object? value = null, ScriptObject? words = null) =>
        value?.ToString() is { } text && words is not null && words.TryGetValue(text, out var other) ? other : value;

    [FunctionText("An English sentence in words of your own, with pounds as kilograms, given as { \"{who} flies at {level}\": \"{who} fliegt in {level}\" }; a sentence that they do not hold stays English, marked with the class `foreign`, and `templates check` names it. With the margin of a finding after the words its text agrees with its figures")]
    public static object? Say(TemplateContext context, object? value = null, ScriptObject? words = null, object? margin = null)
    {
        if (value is null or "")
            return value;
        if (value is not string sentence)
            throw Wrong(context.CurrentSpan, value, "say", "a text");
        if (words is null || words.Count == 0)
            return AmountsInText.Rewritten(sentence, context.CurrentCulture, Figures(margin));
        var sheet = context as SheetContext;
        if ((sheet?.WordsOf(words) ?? new OwnWords(words, context.CurrentCulture)).Of(sentence, Figures(margin)) is { } own)
            return own;
        sheet?.NotesWithoutWords(new ValueError(context.CurrentSpan,
            $"There are no words for “{OwnWords.Shape(sentence)}”, so it stays English; add a line for it, with a name in braces such as {{level}} for each part that changes."));
        var english = AmountsInText.Rewritten(sentence, context.CurrentCulture, Figures(margin));
        return sheet is { IsText: true } ? english : new Markup($"<span class=\"foreign\" lang=\"en\">{Markup.Escaped(english)}</span>");
    }

    private static HeldFigure? Figures(object? margin) => margin is Quantity { Kind: QuantityKind.Plain, PlainUnit: "lb" } pounds ? pounds.Held : null;

    private static string Date(TemplateContext context, LocalDate date, string pattern)
    {
        try
        {
            return LocalDatePattern.Create(pattern, context.CurrentCulture).Format(date);
        }
        catch (InvalidPatternException wrong)
        {
            throw new ValueError(context.CurrentSpan, $"The pattern `{pattern}` of a date is not understood: {wrong.Message}");
        }
    }
}
