using Batch.SampleMaker.Tables;

namespace Batch.SampleMaker.Types;

/// <summary>An invented single-engine turboprop with nine passenger seats.</summary>
public static class HaldenH9
{
    public const string Name = "Halden H9";

    public static InventedType Type { get; } = new()
    {
        Name = Name,
        Description = "Single-engine turboprop, one required pilot (invented)",
        Engine = "turboprop",
        Engines = 1,
        Fuel = "Jet A-1",
        DensityLbPerUsg = 6.7,
        Seats = 9,
        Pressurised = true,
        RampLb = 11120,
        TakeoffLb = 11000,
        LandingLb = 10800,
        ZeroFuelLb = 9300,
        UsableFuelLb = 2700,
        TaxiFuelLb = 45,
        ApproachFuelLb = 35,
        ApproachMin = 5,
        GlideRatio = 15,
        ApproachCategory = "B",
        Equipment = "SDFGRY/LB1 PBN/B2C2D2",
        TakeoffFlap = "15",
        LandingFlap = "40",
        Airframe = new Airframe
        {
            WingAreaM2 = 26,
            ParasiteDrag = 0.021,
            InducedDrag = 0.040,
            PropellerEfficiency = 0.85,
            FlatPowerHp = 1150,
            ThermalPowerHp = 1750,
            PowerFall = 0.75,
            IdleFlow = 110,
            FlowPerHp = 0.47,
            Settings = [("Normal", 0.82), ("Long range", 0.66)],
            ClimbPowerShare = 1,
            ClimbSpeedKt = 150,
            DescentSpeedKt = 185,
            DescentFtPerMin = 1500,
            DescentPowerShare = 0.30,
            HoldingSpeedKt = 140,
            CeilingFt = 28000,
            WeightsLb = [6000, 8000, 9500, 11000],
            RunwayWeightLb = 11000,
            TakeoffRollFt = 1800,
            LandingRollFt = 1600,
            StallKt = 66,
        },
        Places =
        [
            new("Pilots", "crew", 165, 2, null, 1),
            new("Row 1", "seat", 200, 2, null, 1),
            new("Row 2", "seat", 232, 2, null, 2),
            new("Row 3", "seat", 264, 2, null, 3),
            new("Row 4", "seat", 296, 2, null, 4),
            new("Row 5", "seat", 328, 1, null, 5),
            new("Aft baggage", "bags", 368, 0, 420, 1),
        ],
        FuelArms = [(0, 224), (500, 223.6), (1000, 223.8), (1800, 224.4), (2700, 225)],
        Envelope =
        [
            ("takeoff", 6000, 206), ("takeoff", 8500, 206), ("takeoff", 11120, 213), ("takeoff", 11120, 227), ("takeoff", 6000, 227),
            ("landing", 6000, 206), ("landing", 8500, 206), ("landing", 11120, 213), ("landing", 11120, 227), ("landing", 6000, 227),
            ("zero fuel", 6000, 206), ("zero fuel", 8500, 206), ("zero fuel", 9900, 210), ("zero fuel", 9900, 227), ("zero fuel", 6000, 227),
        ],
    };
}
