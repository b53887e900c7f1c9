namespace Batch.Sheets.Figures;

/// <summary>Which way a quantity is rounded when it is written, whatever the unit.</summary>
internal enum RoundingWay
{
    /// <summary>To the nearest, halves away from zero.</summary>
    Nearest,

    /// <summary>Up: what is required.</summary>
    Up,

    /// <summary>Down: what is to spare.</summary>
    Down,
}
