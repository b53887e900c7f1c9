namespace Batch.Sheets.Pictures;

/// <summary>Colours and sizes of the pictures. Every meaning is also told by a shape, a line style or a word, so they may be printed in black.</summary>
internal static class Ink
{
    public const string Black = "#16191d";
    public const string Grey = "#5d646c";
    public const string Hair = "#c3c8ce";
    public const string Ground = "#e4e7ea";
    public const string Tint = "#cfd5db";
    public const string White = "#ffffff";
    public const string Fail = "#761510";
    public const double TextSize = 10;
}
