namespace Batch.Sheets.Pictures;

/// <summary>What a place on the sketch is.</summary>
internal enum SketchKind
{
    /// <summary>Departure or destination.</summary>
    Airport,

    /// <summary>An alternate.</summary>
    Alternate,

    /// <summary>A fix of the route.</summary>
    Fix,
}
