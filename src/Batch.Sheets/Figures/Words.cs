using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Sheets.Figures;

/// <summary>Choices of the books in plain words; nothing known is an empty text.</summary>
internal static class Words
{
    public static string Of(FuelKind? fuel) => fuel is { } kind ? Of(kind) : "";

    public static string Of(FuelKind fuel) => fuel switch { FuelKind.JetA1 => "Jet A-1", FuelKind.Avgas => "Avgas" };

    public static string Of(FlightRules rules) => rules switch { FlightRules.Ifr => "IFR", FlightRules.Vfr => "VFR" };

    public static string Of(LegPurpose purpose) =>
        purpose switch { LegPurpose.Charter => "charter", LegPurpose.Ferry => "ferry", LegPurpose.Training => "training" };

    public static string Of(PersonCategory? category) => category is not { } known ? "" : known switch
    {
        PersonCategory.Adult => "adult",
        PersonCategory.Man => "man",
        PersonCategory.Woman => "woman",
        PersonCategory.Child => "child",
        PersonCategory.Infant => "infant",
    };

    public static string Of(RunwaySurface? surface) => surface is not { } known ? "" : known switch
    {
        RunwaySurface.Paved => "paved",
        RunwaySurface.Grass => "grass",
        RunwaySurface.Gravel => "gravel",
    };

    public static string Of(NoticeEffect effect) => effect switch
    {
        NoticeEffect.Other => "for information",
        NoticeEffect.Closed => "closed",
        NoticeEffect.RunwayClosed => "runway closed",
        NoticeEffect.NoFuel => "no fuel",
        NoticeEffect.NoLights => "no lights",
    };
}
