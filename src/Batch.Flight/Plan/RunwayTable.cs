using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// A takeoff or landing table in use. Below its lowest weight, altitude or temperature the values of the lowest are taken, which are not shorter; beyond the
/// highest only where the operator allows it. Both are said.
/// </summary>
internal sealed class RunwayTable
{
    private const int Weight = 0;
    private const int Temperature = 2;
    private const int Roll = 0;
    private const int Distance = 1;
    private const int Stop = 2;

    private readonly PerformanceTable _table;
    private readonly bool _mayUseEdge;

    /// <summary>Puts a table to use.</summary>
    /// <param name="flap">Flap setting.</param>
    /// <param name="table">Table of weight [lb], pressure altitude [ft] and temperature [°C], giving ground roll and distance over the obstacle [ft].</param>
    /// <param name="mayUseEdge">Whether values at the upper edge may be taken beyond it.</param>
    public RunwayTable(string flap, PerformanceTable table, bool mayUseEdge)
    {
        Flap = flap;
        _table = table;
        _mayUseEdge = mayUseEdge;
    }

    /// <summary>Flap setting.</summary>
    public string Flap { get; }

    /// <summary>Whether it gives the accelerate-stop distance.</summary>
    public bool HasStop => _table.ValueNames.Length > Stop && _table.Has(Stop);

    /// <summary>The greatest weight of the table [lb]; infinite where it does not depend on weight.</summary>
    public double LastWeightLb => _table.Highest(Weight);

    /// <summary>Reads the distances.</summary>
    /// <param name="weightLb">Weight [lb].</param>
    /// <param name="altitudeFt">Pressure altitude [ft].</param>
    /// <param name="temperatureC">Temperature [°C].</param>
    /// <returns>Ground roll, distance over the obstacle and accelerate-stop distance (0 where
    /// there is none) [ft], and sentences about edges taken; or why there are none.</returns>
    public (double RollFt, double DistanceFt, double StopFt, ImmutableArray<string> Edges, string? Why) Read(
        double weightLb, double altitudeFt, double temperatureC)
    {
        if (!_table.Has(Distance)) return (0, 0, 0, [], $"{_table.Name} gives no distance over the obstacle");
        Span<double> values = stackalloc double[_table.ValueNames.Length];
        var sentences = ImmutableArray.CreateBuilder<string>();
        double[] keys = [weightLb, altitudeFt, temperatureC];
        for (var axis = 0; axis < keys.Length; axis++)
        {
            if (keys[axis] >= _table.Lowest(axis)) continue;
            sentences.Add(_table.Sentence(new TableReading(axis, keys[axis], _table.Lowest(axis))) + ": the values there were taken");
            keys[axis] = _table.Lowest(axis);
        }

        var reading = _table.Read(keys, values);
        if (!reading.IsInside)
        {
            if (!_mayUseEdge) return (0, 0, 0, [], _table.Sentence(reading));
            sentences.Add(_table.Sentence(reading) + ": the values at the edge were taken");
        }

        if (!_table.Has(Roll)) sentences.Add($"{_table.Name} gives no ground roll: the distance over the obstacle was taken");
        return (_table.Has(Roll) ? values[Roll] : values[Distance], values[Distance], HasStop ? values[Stop] : 0, sentences.ToImmutable(), null);
    }

    /// <summary>The greatest weight of the table with which a condition is met.</summary>
    /// <param name="altitudeFt">Pressure altitude [ft].</param>
    /// <param name="temperatureC">Temperature [°C].</param>
    /// <param name="fits">The condition on ground roll, distance over the obstacle and accelerate-stop distance [ft].</param>
    /// <returns>The weight [lb], itself meeting the condition; null where no weight of the table does, or where the table does not depend on weight.</returns>
    public double? GreatestWeight(double altitudeFt, double temperatureC, Func<double, double, double, bool> fits) =>
        Greatest(Weight, weight => Read(weight, altitudeFt, temperatureC), fits);

    /// <summary>The highest temperature of the table at which a condition is met.</summary>
    /// <param name="weightLb">Weight [lb].</param>
    /// <param name="altitudeFt">Pressure altitude [ft].</param>
    /// <param name="fits">The condition on ground roll, distance over the obstacle and accelerate-stop distance [ft].</param>
    /// <returns>The temperature [°C]; null where none of the table does, or where the table does not depend on temperature.</returns>
    public double? HighestTemperature(double weightLb, double altitudeFt, Func<double, double, double, bool> fits) =>
        Greatest(Temperature, temperature => Read(weightLb, altitudeFt, temperature), fits);

    // From the highest key downward to the first that fits; between it and the next, which does not, the distance is linear, and halving finds the last that
    // fits.
    private double? Greatest(int axis, Func<double, (double RollFt, double DistanceFt, double StopFt, ImmutableArray<string> Edges, string? Why)> read,
        Func<double, double, double, bool> fits)
    {
        bool Fits(double key) => read(key) is { Why: null } reading && fits(reading.RollFt, reading.DistanceFt, reading.StopFt);
        var keys = _table.Keys(axis);
        for (var i = keys.Length - 1; i >= 0; i--)
        {
            if (!Fits(keys[i])) continue;
            if (i == keys.Length - 1) return keys[i];
            var (good, bad) = (keys[i], keys[i + 1]);
            while (bad - good > 1e-9 * Math.Max(1, Math.Abs(bad)))
            {
                var middle = (good + bad) / 2;
                if (Fits(middle)) good = middle;
                else bad = middle;
            }

            return good;
        }

        return null;
    }
}
