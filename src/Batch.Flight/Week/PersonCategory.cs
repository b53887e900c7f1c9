namespace Batch.Flight.Week;

/// <summary>Category of a passenger, which gives the standard weight where none is stated.</summary>
public enum PersonCategory
{
    /// <summary>Adult, sex not said.</summary>
    Adult,

    /// <summary>Adult man.</summary>
    Man,

    /// <summary>Adult woman.</summary>
    Woman,

    /// <summary>Child of two years or more.</summary>
    Child,

    /// <summary>Infant under two years, on a lap unless a seat is named.</summary>
    Infant,
}
