using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>Certificates, ratings and hours of the captain, and what the second pilot needs.</summary>
internal sealed class PilotHours : ICheck
{
    private const string AirlineTransport = "airline transport";

    /// <inheritdoc/>
    public string Id => "CREW-06";

    /// <inheritdoc/>
    public string Title => "Pilot qualification";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Crew", "Crew: certificate", "Crew: instrument rating", "Crew: hours", "Crew: cross-country hours",
        "Crew: night hours", "Crew: instrument hours", "Crew: approaches in 6 months, of the second pilot, under part 91 of the captain"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["total hours of the captain"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.SelectMany(seat => seat.Member is { } member
        ? Certificates(ruling, seat, member).Concat(seat.IsCaptain ? Hours(ruling, seat, member) : []).Concat(Recent(ruling, seat, member))
        : [ruling.NotChecked($"the {seat.Role} {seat.Code} is not in the Crew sheet", seat.Cell)]);

    private static IEnumerable<Finding> Certificates(Ruling ruling, LegUnderCheck.Seat seat, CrewMember member)
    {
        var cell = member.Origin.Cell(nameof(CrewMember.Certificate));
        if (ruling.Condition($"airline transport certificate of the {seat.Role}") is { } highest)
        {
            yield return member.Certificate switch
            {
                "" => ruling.NotChecked($"the certificate of {seat.Code} is not given", cell),
                AirlineTransport => ruling.Pass($"{seat.Code} holds an airline transport certificate.", highest, cell),
                _ => ruling.Trips(highest,
                    $"{seat.Code} holds a {member.Certificate} certificate; an airline transport certificate is required of the {seat.Role}.", cell, seat.Cell),
            };
        }
        else if (ruling.Condition($"commercial certificate of the {seat.Role}") is { } commercial)
        {
            yield return member.Certificate switch
            {
                "" => ruling.NotChecked($"the certificate of {seat.Code} is not given", cell),
                AirlineTransport or "commercial" => ruling.Pass(
                    $"{seat.Code} holds {(member.Certificate == AirlineTransport ? "an" : "a")} {member.Certificate} certificate.", commercial, cell),
                _ => ruling.Trips(commercial, $"{seat.Code} holds a {member.Certificate} certificate; a commercial certificate is required of the {seat.Role}.",
                    cell, seat.Cell),
            };
        }

        if (ruling.Condition($"instrument rating of the {seat.Role}") is { } rating)
        {
            var own = member.Origin.Cell(nameof(CrewMember.InstrumentRating));
            yield return member.InstrumentRating switch
            {
                null when member.Certificate == AirlineTransport =>
                    ruling.Pass($"{seat.Code} holds an airline transport certificate, which has the instrument privileges.", rating, cell),
                null => ruling.NotChecked($"the instrument rating of {seat.Code} is not given", own),
                true => ruling.Pass($"{seat.Code} holds an instrument rating.", rating, own),
                false => ruling.Trips(rating, $"{seat.Code} holds no instrument rating.", own, seat.Cell),
            };
        }
    }

    private static IEnumerable<Finding> Hours(Ruling ruling, LegUnderCheck.Seat seat, CrewMember member) =>
        new (string Amount, string What, double? Hours, string Field)[]
        {
            ("total hours of the captain", "Total flight time", member.Hours, nameof(CrewMember.Hours)),
            ("cross-country hours of the captain", "Cross-country flight time", member.CrossCountryHours, nameof(CrewMember.CrossCountryHours)),
            ("night hours of the captain", "Night flight time", member.NightHours, nameof(CrewMember.NightHours)),
            ("instrument hours of the captain", "Instrument time", member.InstrumentHours, nameof(CrewMember.InstrumentHours)),
        }.SelectMany(one => ruling.AmountOrNone(one.Amount) is { } least
            ? new[]
            {
                one.Hours is { } hours
                    ? ruling.AtLeast($"{one.What} of {seat.Code}", hours, least.Value, "h", "required of a captain", least, seat.Cell,
                        member.Origin.Cell(one.Field))
                    : ruling.NotChecked(
                        $"the {char.ToLowerInvariant(one.What[0])}{one.What[1..]} of {seat.Code} is not given; {Words.Amount(least.Value, "h")} are required",
                        member.Origin.Cell(one.Field)),
            }
            : []);

    private static IEnumerable<Finding> Recent(Ruling ruling, LegUnderCheck.Seat seat, CrewMember member)
    {
        if (ruling.AmountOrNone($"approaches of the {seat.Role}") is not { } least)
        {
            yield break;
        }

        var cell = member.Origin.Cell(nameof(CrewMember.RecentApproaches));
        yield return member.RecentApproaches is { } approaches
            ? ruling.AtLeast($"The number of instrument approaches of {seat.Code} in six months", approaches, least.Value, "",
                seat.IsCaptain ? "required of a captain under IFR" : "required of a second pilot", least, cell, seat.Cell) with
            { Unit = "approaches" }
            : ruling.NotChecked($"the instrument approaches of {seat.Code} in six months are not given; {Words.Amount(least.Value, "")} are required", cell);
    }
}
