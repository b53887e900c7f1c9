namespace Batch.Sheets.Figures;

/// <summary>What a quantity measures; decides which units it can be written in.</summary>
internal enum QuantityKind
{
    /// <summary>Weight of anything but fuel, held in lb.</summary>
    Weight,

    /// <summary>Fuel, held in lb; can be written as a volume through its density.</summary>
    Fuel,

    /// <summary>Fuel flow, held in lb/h.</summary>
    Flow,

    /// <summary>Distance over the ground or through the air, held in NM.</summary>
    Distance,

    /// <summary>Height, elevation, altitude or runway length, held in ft.</summary>
    Height,

    /// <summary>Arm, held in in.</summary>
    Arm,

    /// <summary>Speed, held in kt.</summary>
    Speed,

    /// <summary>Temperature, held in °C.</summary>
    Temperature,

    /// <summary>Course, heading or bearing, held in deg.</summary>
    Angle,

    /// <summary>A plain number in the unit named by its finding.</summary>
    Plain,
}
