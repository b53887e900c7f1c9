using Batch.Sheets.Figures;

namespace Batch.Sheets.Pictures;

/// <summary>A state of loading to be drawn.</summary>
/// <param name="Name">Takeoff, Landing or Zero fuel.</param>
/// <param name="WeightLb">Weight [lb].</param>
/// <param name="Printed">The weight as it is printed beside its limit.</param>
/// <param name="ArmIn">Centre of gravity [in].</param>
/// <param name="IsInside">Whether it lies inside its envelope, or is not tested.</param>
internal sealed record LoadingState(string Name, double WeightLb, Quantity Printed, double ArmIn, bool IsInside);
