using Batch.SampleMaker.Tables;

namespace Batch.SampleMaker.Types;

/// <summary>An invented light piston twin with five passenger seats.</summary>
public static class BraskB6
{
    public const string Name = "Brask B6";

    public static InventedType Type { get; } = new()
    {
        Name = Name,
        Description = "Light piston twin, turbocharged, not pressurised (invented)",
        Engine = "piston",
        Engines = 2,
        Fuel = "Avgas",
        DensityLbPerUsg = 6.0,
        Seats = 5,
        Pressurised = false,
        RampLb = 5825,
        TakeoffLb = 5800,
        LandingLb = 5600,
        ZeroFuelLb = 5300,
        UsableFuelLb = 780,
        TaxiFuelLb = 20,
        ApproachFuelLb = 15,
        ApproachMin = 5,
        GlideRatio = 10,
        ApproachCategory = "B",
        Equipment = "SDFGR/S PBN/B2C2D2",
        TakeoffFlap = "10",
        LandingFlap = "35",
        Airframe = new Airframe
        {
            WingAreaM2 = 20,
            ParasiteDrag = 0.026,
            InducedDrag = 0.050,
            PropellerEfficiency = 0.82,
            FlatPowerHp = 600,
            ThermalPowerHp = 950,
            PowerFall = 0.75,
            IdleFlow = 20,
            FlowPerHp = 0.40,
            Settings = [("Normal", 0.65), ("Long range", 0.52)],
            ClimbPowerShare = 0.85,
            ClimbSpeedKt = 122,
            DescentSpeedKt = 160,
            DescentFtPerMin = 700,
            DescentPowerShare = 0.40,
            HoldingSpeedKt = 115,
            CeilingFt = 14000,
            WeightsLb = [3900, 4600, 5200, 5800],
            RunwayWeightLb = 5800,
            TakeoffRollFt = 1250,
            LandingRollFt = 900,
            StallKt = 62,
        },
        Places =
        [
            new("Pilots", "crew", 96, 2, null, 1),
            new("Row 1", "seat", 128, 2, null, 1),
            new("Row 2", "seat", 158, 2, null, 2),
            new("Row 3", "seat", 184, 1, null, 3),
            new("Nose baggage", "bags", 40, 0, 120, 1),
            new("Aft baggage", "bags", 205, 0, 200, 2),
        ],
        FuelArms = [(0, 112), (400, 112), (780, 112.6)],
        Envelope =
        [
            ("takeoff", 3800, 103), ("takeoff", 5000, 103), ("takeoff", 5825, 106.5), ("takeoff", 5825, 118), ("takeoff", 3800, 118),
            ("landing", 3800, 103), ("landing", 5000, 103), ("landing", 5825, 106.5), ("landing", 5825, 118), ("landing", 3800, 118),
            ("zero fuel", 3800, 103), ("zero fuel", 5000, 103), ("zero fuel", 5600, 105.5), ("zero fuel", 5600, 118), ("zero fuel", 3800, 118),
        ],
    };
}
