namespace Batch.Flight.Plan;

/// <summary>Kind of a point in the navigation log.</summary>
public enum LogPointKind
{
    /// <summary>Departure or destination.</summary>
    Airport,

    /// <summary>A point of the route.</summary>
    Fix,

    /// <summary>Top of climb.</summary>
    TopOfClimb,

    /// <summary>Top of descent.</summary>
    TopOfDescent,
}
