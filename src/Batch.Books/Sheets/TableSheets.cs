using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The sheets of performance tables whose columns are fixed: Climb, Cruise, Descent, Holding, Takeoff and Landing.</summary>
internal static class TableSheets
{
    /// <summary>Climb.</summary>
    public static readonly SheetPlan Climb = new("Climb", "operator", "Climb from sea level, cumulative: time, fuel and still-air distance to each altitude.");

    /// <summary>Cruise.</summary>
    public static readonly SheetPlan Cruise = new("Cruise", "operator", "Cruise: true airspeed and fuel flow for each setting.");

    /// <summary>Descent.</summary>
    public static readonly SheetPlan Descent =
        new("Descent", "operator", "Descent to sea level, cumulative: time, fuel and still-air distance from each altitude.");

    /// <summary>Holding.</summary>
    public static readonly SheetPlan Holding = new("Holding", "operator", "Holding: fuel flow.");

    /// <summary>Takeoff.</summary>
    public static readonly SheetPlan Takeoff = new("Takeoff", "operator", "Takeoff distances on a level, dry, paved runway in still air.");

    /// <summary>Landing.</summary>
    public static readonly SheetPlan Landing = new("Landing", "operator", "Landing distances on a level, dry, paved runway in still air.");

    private const bool Starred = ColumnKinds.Starred;

    private static readonly TableColumns ClimbColumns = new(Climb, isa: true, weight: true, altitude: "Altitude", timeFuelDistance: true);
    private static readonly TableColumns CruiseColumns =
        new(Cruise, variant: "Setting", isa: true, weight: true, altitude: "Altitude", speedAndFlow: (true, true));
    private static readonly TableColumns DescentColumns = new(Descent, altitude: "Altitude", timeFuelDistance: true);
    private static readonly TableColumns HoldingColumns = new(Holding, weight: true, altitude: "Altitude", speedAndFlow: (false, true));
    private static readonly TableColumns TakeoffColumns = new(Takeoff, variant: "Flap", weight: true, altitude: "Pressure altitude", runway: true);
    private static readonly TableColumns LandingColumns = new(Landing, variant: "Flap", weight: true, altitude: "Pressure altitude", runway: true);

    /// <summary>Reads all of them.</summary>
    public static Func<string, PerformanceTables> Read(Shelf shelf, Register<AircraftType> types)
    {
        var climb = ClimbColumns.Read(shelf, types);
        var cruise = CruiseColumns.Read(shelf, types);
        var descent = DescentColumns.Read(shelf, types);
        var holding = HoldingColumns.Read(shelf, types);
        var takeoff = TakeoffColumns.Read(shelf, types);
        var landing = LandingColumns.Read(shelf, types);
        var speeds = SpeedsSheet.Read(shelf, types);
        return type => new PerformanceTables
        {
            Climb = climb[type].FirstOrDefault().Table,
            Cruise = Sorted(cruise[type]),
            CruiseSettings = [.. cruise[type].Select(entry => entry.Variant)],
            Descent = descent[type].FirstOrDefault().Table,
            Holding = holding[type].FirstOrDefault().Table,
            Takeoff = Sorted(takeoff[type]),
            Landing = Sorted(landing[type]),
            Speeds = Sorted(speeds[type]),
        };
    }

    private static ImmutableSortedDictionary<string, PerformanceTable> Sorted(IEnumerable<(string Variant, PerformanceTable Table)> tables) =>
        tables.ToImmutableSortedDictionary(entry => entry.Variant, entry => entry.Table, StringComparer.OrdinalIgnoreCase);

    /// <summary>The columns of one of these sheets; declares those that it has.</summary>
    private sealed class TableColumns
    {
        private readonly SheetPlan _plan;
        private readonly Column<string> _type;
        private readonly Column<string>? _variant;
        private readonly Column<double>? _isa;
        private readonly Column<double>? _weight;
        private readonly Column<double> _altitude;
        private readonly Column<double>? _temperature;
        private readonly Column<double>? _time;
        private readonly Column<FuelAmount>? _fuel;
        private readonly Column<double>? _distance;
        private readonly Column<double>? _speed;
        private readonly Column<FuelAmount>? _flow;
        private readonly Column<double>? _roll;
        private readonly Column<double>? _obstacle;
        private readonly Column<double>? _stop;
        private readonly bool _runway;

        public TableColumns(SheetPlan plan, string variant = "", bool isa = false, bool weight = false, string altitude = "", bool timeFuelDistance = false,
            (bool Speed, bool Flow) speedAndFlow = default, bool runway = false)
        {
            _plan = plan;
            _runway = runway;
            _type = plan.Add(ColumnKinds.Text("Type", "Type", "Type as in Types.", Starred));
            if (variant == "Setting")
                _variant = plan.Add(ColumnKinds.Text("Setting", "Setting", "Name of the cruise setting; the first named is the usual one.", Starred));
            if (variant == "Flap") _variant = plan.Add(ColumnKinds.Text("Flap", "Flap", "Name of the flap setting.", false, "Flaps"));
            if (isa) _isa = plan.Add(
                ColumnKinds.Number(Quantity.TemperatureDifference, "ISA deviation", "IsaDeviation", "Temperature above (+) or below (-) standard."));
            if (weight)
                _weight = plan.Add(ColumnKinds.AboveZero(Quantity.Weight, "Weight", "Weight", runway ? "Gross weight." : "Weight the row holds for.", runway));
            _altitude = plan.Add(ColumnKinds.Number(Quantity.Altitude, altitude, "Altitude", "Pressure altitude.", Starred, "Pressure altitude", "Altitude"));
            if (runway)
            {
                _temperature = plan.Add(ColumnKinds.Number(Quantity.Temperature, "Temperature", "Temperature", "Outside air temperature.", Starred, "OAT"));
                _roll = plan.Add(ColumnKinds.AboveZero(Quantity.RunwayLength, "Ground roll", "GroundRoll", "Ground roll.", Starred));
                _obstacle = plan.Add(ColumnKinds.AboveZero(Quantity.RunwayLength, "Over obstacle", "OverObstacle", "Distance over a 50 ft obstacle.", Starred,
                    "Over 50 ft", "Over 50 ft obstacle", "Total distance"));
                if (plan == Takeoff) _stop = plan.Add(ColumnKinds.AboveZero(Quantity.RunwayLength, "Accelerate-stop", "AccelerateStop",
                    "Accelerate-stop distance; empty: not tabled.", false, "Accelerate-stop distance", "ASD"));
            }

            if (timeFuelDistance)
            {
                _time = plan.Add(ColumnKinds.Span(Quantity.Minutes, "Time", "Time", "Time, cumulative.", Starred));
                _fuel = plan.Add(ColumnKinds.Fuel("Fuel", "Fuel", "Fuel, cumulative.", Starred));
                _distance = plan.Add(ColumnKinds.NotNegative(Quantity.Distance, "Distance", "Distance", "Still-air distance, cumulative.", Starred));
            }

            if (speedAndFlow.Speed) _speed = plan.Add(ColumnKinds.AboveZero(Quantity.Speed, "TAS", "Speed", "True airspeed.", Starred, "True airspeed"));
            if (speedAndFlow.Flow) _flow = plan.Add(ColumnKinds.FuelFlow("Fuel flow", "FuelFlow", "Fuel flow of all engines.", Starred));
        }

        public ILookup<string, (string Variant, PerformanceTable Table)> Read(Shelf shelf, Register<AircraftType> types)
        {
            var table = new TableRows(_plan, Axes(), Values(), types);
            foreach (var row in shelf.Rows(_plan)) TakeRow(row, table, types);
            return table.Tables();
        }

        private void TakeRow(Row row, TableRows table, Register<AircraftType> types)
        {
            var type = row.NeededText(_type);
            var known = types.Resolve(row, _type, type);
            var variant = _variant is null ? "" : _variant.IsRequired ? row.NeededText(_variant) : row.Text(_variant);
            var keys = new List<double?>();
            if (_weight is not null) keys.Add(_weight.IsRequired ? row.Needed(_weight) : row.Optional(_weight));
            if (_isa is not null) keys.Add(row.Optional(_isa));
            keys.Add(row.Needed(_altitude));
            if (_temperature is not null) keys.Add(row.Needed(_temperature));
            var values = new List<double?>();
            if (_speed is not null) values.Add(row.Needed(_speed));
            if (_time is not null) values.Add(row.Needed(_time));
            if (_fuel is not null) values.Add(row.NeededFuel(_fuel, type, known?.FuelDensity));
            if (_flow is not null) values.Add(row.NeededFuel(_flow, type, known?.FuelDensity));
            if (_distance is not null) values.Add(row.Needed(_distance));
            if (_roll is not null && _obstacle is not null)
            {
                values.Add(row.Needed(_roll));
                values.Add(row.Needed(_obstacle));
                if (!row.IsLost && values[0] > values[1]) row.Fail(_obstacle, "Over obstacle is shorter than Ground roll", "at least the ground roll");
                if (_stop is not null) values.Add(row.Optional(_stop));
            }

            table.Take(row, type, known is not null, variant, [.. keys], [.. values]);
        }

        private ImmutableArray<string> Axes() =>
        [
            .. _weight is null ? [] : new[] { _plan == Climb ? "weight at takeoff [lb]" : "weight [lb]" },
            .. _isa is null ? [] : new[] { "ISA deviation [K]" },
            "pressure altitude [ft]",
            .. _temperature is null ? [] : new[] { "temperature [°C]" },
        ];

        private ImmutableArray<string> Values() =>
        [
            .. _speed is null ? [] : new[] { "true airspeed [kt]" },
            .. _time is null ? [] : new[] { "time [min]", "fuel [lb]", "distance [NM]" },
            .. _flow is null ? [] : new[] { "fuel flow [lb/h]" },
            .. _runway ? new[] { "ground roll [ft]", "distance over the obstacle [ft]" } : [],
            .. _stop is null ? [] : new[] { "accelerate-stop distance [ft]" },
        ];
    }
}
