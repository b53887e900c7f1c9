using System.Globalization;
using System.Text;

namespace Batch.SampleMaker.Week;

/// <summary>The legs that fail on purpose; every other leg passes or has cautions only.</summary>
public static class ExpectedFailures
{
    public static ImmutableArray<ExpectedFailure> All { get; } =
    [
        new("T106", 1, "ALT-02", "No alternate filed although the forecast at the destination is low"),
        new("T110", 1, "WB-07", "Cargo above the maximum of the aft baggage compartment"),
        new("T113", 1, "ENR-01", "Single engine with passengers over water out of gliding reach of land"),
        new("T116", 1, "FUEL-03", "Fixed fuel is less than what the destination and the alternate and 45 minutes need"),
        new("T117", 1, "WB-04", "Centre of gravity behind the envelope from takeoff to the empty tank", "WB-05"),
        new("T120", 1, "WB-05", "Landing weight above the maximum: short leg with much fuel"),
        new("T121", 1, "WB-03", "Takeoff weight above the maximum"),
        new("T122", 1, "WB-06", "One passenger more than seats"),
        new("T123", 1, "WB-01", "Zero-fuel weight above the maximum"),
        new("T124", 1, "ENR-03", "Filed level below the minimum altitude of the airway"),
        new("T125", 1, "PERF-03", "Grass strip too short for the landing"),
        new("T126", 1, "ADM-04", "Arrives in the quiet hours"),
        new("T127", 1, "FUEL-06", "Needs more fuel than the tanks hold"),
        new("T130", 1, "CREW-11", "Captain is still on another aircraft"),
        new("T131", 1, "PERF-08", "Passengers at night to a strip without lights, in an aircraft not equipped for the night", "ACFT-04"),
        new("T131", 2, "unplanned", "Misspelt airport"),
        new("T132", 1, "CREW-11", "Aircraft stands somewhere else"),
        new("T133", 1, "CREW-06", "Captain under IFR with fewer than 100 hours at night"),
        new("T133", 2, "ADM-02", "No flight plan and nobody who follows the flight"),
    ];

    public static void Write(string path)
    {
        var text = new StringBuilder("trip,leg,check,also,why\n");
        foreach (var failure in All)
        {
            text.Append(CultureInfo.InvariantCulture, $"{failure.Trip},{failure.Leg},{failure.Check},{failure.Also},{failure.Why}\n");
        }

        File.WriteAllText(path, text.ToString());
    }
}
