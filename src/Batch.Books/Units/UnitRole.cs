namespace Batch.Books.Units;

/// <summary>Which default unit of the Operator sheet holds for a column without a unit in its header.</summary>
internal enum UnitRole
{
    /// <summary>None: the column's own unit holds.</summary>
    None,

    /// <summary>Weight unit.</summary>
    Weight,

    /// <summary>Fuel unit.</summary>
    Fuel,

    /// <summary>Fuel unit, by the hour.</summary>
    FuelFlow,

    /// <summary>Distance unit.</summary>
    Distance,

    /// <summary>Runway unit.</summary>
    Runway,

    /// <summary>Altitude unit.</summary>
    Altitude,

    /// <summary>Temperature unit.</summary>
    Temperature,

    /// <summary>Speed unit.</summary>
    Speed,
}
