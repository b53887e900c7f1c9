using Batch.Checks.Airframe;
using Batch.Checks.Airports;
using Batch.Checks.Alternates;
using Batch.Checks.Crews;
using Batch.Checks.Data;
using Batch.Checks.Enroute;
using Batch.Checks.Following;
using Batch.Checks.Fuel;
using Batch.Checks.Loading;
using Batch.Checks.Runways;

namespace Batch.Checks;

/// <summary>Every check, in the order of the register.</summary>
internal static class AllChecks
{
    /// <summary>The checks.</summary>
    public static ImmutableArray<ICheck> List { get; } =
    [
        new DayReserve(),
        new NightReserve(),
        new InstrumentReserve(),
        new Contingency(),
        new HoldingWithoutAlternate(),
        new TankCapacity(),
        new CompanyLandingFuel(),
        new PlausibleFuel(),
        new FuelSoldHere(),
        new FuelForNextDeparture(),
        new DestinationForecast(),
        new AlternateRequired(),
        new AlternateForecast(),
        new DepartureWeather(),
        new ApproachExists(),
        new HighMinimaCaptain(),
        new WeatherSource(),
        new ZeroFuelWeight(),
        new RampWeight(),
        new TakeoffWeight(),
        new TakeoffBalance(),
        new LandingAndBurn(),
        new Seats(),
        new StationLimits(),
        new WeightBasis(),
        new Weighing(),
        new TakeoffDistance(),
        new FactoredTakeoff(),
        new LandingDistance(),
        new FactoredLanding(),
        new ArrivalMargin(),
        new KnownCorrections(),
        new WindComponents(),
        new NightLights(),
        new GlideToLand(),
        new OverwaterKit(),
        new MinimumAltitude(),
        new OverTheTop(),
        new Oxygen(),
        new Icing(),
        new VisualWeather(),
        new LevelLimits(),
        new CruisingLevel(),
        new FlightTimeInDay(),
        new Rest(),
        new FlightTimeInYear(),
        new RestAfterOverrun(),
        new LongRests(),
        new PilotHours(),
        new CrewChecks(),
        new Recency(),
        new Medical(),
        new CrewComposition(),
        new CrewAndAircraft(),
        new CrewQualified(),
        new FlightDutyPeriod(),
        new DutyInDays(),
        new RestBeforeDuty(),
        new RecoveryRest(),
        new Inspections(),
        new DatedTests(),
        new Serviceable(),
        new FittedEquipment(),
        new VorCheck(),
        new Briefing(),
        new FlightFollowing(),
        new BorderManifest(),
        new AirportHours(),
        new Closures(),
        new Familiarity(),
        new DataIntegrity(),
        new FiguresAtRest(),
    ];
}
