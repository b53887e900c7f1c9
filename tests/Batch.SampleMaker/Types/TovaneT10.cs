using Batch.SampleMaker.Tables;

namespace Batch.SampleMaker.Types;

/// <summary>An invented twin turboprop with nine passenger seats.</summary>
public static class TovaneT10
{
    public const string Name = "Tovane T10";

    public static InventedType Type { get; } = new()
    {
        Name = Name,
        Description = "Twin turboprop, one required pilot (invented)",
        Engine = "turboprop",
        Engines = 2,
        Fuel = "Jet A-1",
        DensityLbPerUsg = 6.7,
        Seats = 9,
        Pressurised = true,
        RampLb = 12380,
        TakeoffLb = 12300,
        LandingLb = 11600,
        ZeroFuelLb = 10400,
        UsableFuelLb = 3000,
        TaxiFuelLb = 70,
        ApproachFuelLb = 55,
        ApproachMin = 5,
        GlideRatio = 13,
        ApproachCategory = "B",
        Equipment = "SDFGRWY/LB1 PBN/B2C2D2",
        TakeoffFlap = "Approach",
        LandingFlap = "Full",
        Airframe = new Airframe
        {
            WingAreaM2 = 28,
            ParasiteDrag = 0.025,
            InducedDrag = 0.040,
            PropellerEfficiency = 0.86,
            FlatPowerHp = 1600,
            ThermalPowerHp = 2900,
            PowerFall = 0.75,
            IdleFlow = 180,
            FlowPerHp = 0.50,
            Settings = [("Normal", 0.80), ("Long range", 0.64)],
            ClimbPowerShare = 1,
            ClimbSpeedKt = 165,
            DescentSpeedKt = 205,
            DescentFtPerMin = 1500,
            DescentPowerShare = 0.28,
            HoldingSpeedKt = 150,
            CeilingFt = 30000,
            WeightsLb = [7500, 9000, 10700, 12300],
            RunwayWeightLb = 12300,
            TakeoffRollFt = 2100,
            LandingRollFt = 1700,
            StallKt = 77,
        },
        Places =
        [
            new("Pilots", "crew", 110, 2, null, 1),
            new("Row 1", "seat", 150, 2, null, 1),
            new("Row 2", "seat", 182, 2, null, 2),
            new("Row 3", "seat", 214, 2, null, 3),
            new("Row 4", "seat", 246, 2, null, 4),
            new("Row 5", "seat", 272, 1, null, 5),
            new("Aft baggage", "bags", 300, 0, 500, 1),
            new("Nose baggage", "bags", 60, 0, 300, 2),
        ],
        FuelArms = [(0, 196), (1000, 195.4), (2000, 196), (3000, 197)],
        Envelope =
        [
            ("takeoff", 7400, 180), ("takeoff", 10500, 180), ("takeoff", 12380, 184), ("takeoff", 12380, 199), ("takeoff", 7400, 199),
            ("landing", 7400, 180), ("landing", 10500, 180), ("landing", 12380, 184), ("landing", 12380, 199), ("landing", 7400, 199),
            ("zero fuel", 7400, 180), ("zero fuel", 10500, 180), ("zero fuel", 10900, 181), ("zero fuel", 10900, 199), ("zero fuel", 7400, 199),
        ],
    };
}
