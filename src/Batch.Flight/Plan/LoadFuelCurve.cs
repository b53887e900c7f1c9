using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Fuel moment against fuel weight: linear between the points of the type, from nothing at no fuel, at the arm of the last point beyond it.</summary>
internal readonly struct LoadFuelCurve
{
    private readonly ImmutableArray<FuelMoment> _points;

    /// <summary>Makes the curve.</summary>
    /// <param name="points">Points rising in fuel; a point at no fuel is not needed.</param>
    public LoadFuelCurve(ImmutableArray<FuelMoment> points) => _points = points;

    /// <summary>Fuel of the last point; zero without points.</summary>
    public Pounds End => _points.IsEmpty ? Pounds.Zero : _points[^1].Fuel;

    /// <summary>Whether a fuel lies beyond the last point.</summary>
    /// <param name="fuel">Fuel [lb].</param>
    public bool IsBeyond(Pounds fuel) => fuel > End;

    /// <summary>Moment of a fuel; zero without points. A fuel below zero, as met while fuel is being sought, is taken at the arm of the first point.</summary>
    /// <param name="fuel">Fuel [lb].</param>
    public PoundInches Moment(Pounds fuel)
    {
        var below = new FuelMoment(Pounds.Zero, PoundInches.Zero);
        foreach (var point in _points)
        {
            if (fuel <= point.Fuel)
            {
                return point.Fuel == below.Fuel
                    ? point.Moment
                    : below.Moment + ((point.Moment - below.Moment) * ((fuel - below.Fuel) / (point.Fuel - below.Fuel)));
            }

            below = point;
        }

        return below.Fuel.Value > 0 ? below.Moment * (fuel / below.Fuel) : PoundInches.Zero;
    }

    /// <summary>The fuels at which to look when fuel burns from one amount to another: both ends and every point of the curve between.</summary>
    /// <param name="from">Fuel at first [lb].</param>
    /// <param name="to">Fuel at last [lb]; where not less than the first, the first alone.</param>
    public IEnumerable<Pounds> Path(Pounds from, Pounds to)
    {
        if (to >= from) return [from];
        return [from, .. _points.Select(point => point.Fuel).Where(fuel => fuel < from && fuel > to && fuel.Value > 0).OrderDescending(), to];
    }
}
