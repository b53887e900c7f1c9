namespace Batch.Sheets.Pictures;

/// <summary>A place on the sketch.</summary>
/// <param name="Name">Its ident.</param>
/// <param name="X">Where it is drawn.</param>
/// <param name="Y">Where it is drawn.</param>
/// <param name="Kind">What it is.</param>
internal readonly record struct SketchMark(string Name, double X, double Y, SketchKind Kind);
