using Batch.Checks.Crews;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Airframe;

/// <summary>Altimeter, transponder and locator tests against the date of the leg.</summary>
internal sealed class DatedTests : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-02";

    /// <inheritdoc/>
    public string Title => "Dated tests";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: altimeter-static due", "Aircraft: transponder due", "Aircraft: ELT due"];

    /// <inheritdoc/>
    public string Actor => "maintenance";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["days of warning"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var aircraft = leg.Aircraft;
        Finding Test(string part, string what, LocalDate? until, string field) =>
            ValidUntil.Look(leg, ruling, $"{what} of {aircraft.Registration}", until, ruling.Condition(part), hasGrace: false, aircraft.Origin.Cell(field));
        if (ruling.Condition("altimeter and static system") is not null)
        {
            yield return Test("altimeter and static system", "Altimeter and static system test", aircraft.AltimeterStaticDue,
                nameof(Aircraft.AltimeterStaticDue));
        }

        yield return Test("transponder", "Transponder test", aircraft.TransponderDue, nameof(Aircraft.TransponderDue));
        yield return Test("locator transmitter", "Locator transmitter inspection", aircraft.ElectronicLocatorDue, nameof(Aircraft.ElectronicLocatorDue));
    }
}
