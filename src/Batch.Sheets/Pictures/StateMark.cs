using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>
/// The shape of a state: a disc passes, a triangle warns, a square with a bar stops, an open diamond could not be planned, a ring is a note or not checked.
/// </summary>
internal static class StateMark
{
    // 14 CFR 25.1322: red for warnings, amber for cautions; so dark that they are seen on paper under a red lamp.
    private const string Red = Ink.Fail;
    private const string Amber = "#764600";
    private const string Green = "#1c6b3a";

    public static Markup Of(string code, string word)
    {
        var shape = code switch
        {
            "pass" => $"<circle cx=\"6\" cy=\"6\" r=\"5\" fill=\"{Green}\"/><path d=\"M3.5 6.2 L5.3 8 L8.6 4.3\" fill=\"none\" stroke=\"#ffffff\" stroke-width=\"1.4\"/>",
            "caution" => $"<polygon points=\"6,0.8 11.6,11 0.4,11\" fill=\"{Amber}\"/><path d=\"M6 4.2 L6 7.6 M6 8.8 L6 9.9\" fill=\"none\" stroke=\"#ffffff\" stroke-width=\"1.4\"/>",
            "fail" => $"<rect x=\"0.8\" y=\"0.8\" width=\"10.4\" height=\"10.4\" fill=\"{Red}\"/><path d=\"M3.4 3.4 L8.6 8.6 M8.6 3.4 L3.4 8.6\" fill=\"none\" stroke=\"#ffffff\" stroke-width=\"1.6\"/>",
            "unplanned" => $"<polygon points=\"6,0.8 11.2,6 6,11.2 0.8,6\" fill=\"#ffffff\" stroke=\"{Red}\" stroke-width=\"1.5\"/>",
            _ => $"<circle cx=\"6\" cy=\"6\" r=\"4.4\" fill=\"none\" stroke=\"{Ink.Grey}\" stroke-width=\"1.4\"/>",
        };
        return new Markup($"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"mark\" role=\"img\" viewBox=\"0 0 12 12\" width=\"12\" height=\"12\"><title>{Markup.Escaped(word)}</title>{shape}</svg>");
    }
}
