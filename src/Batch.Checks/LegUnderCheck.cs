using Batch.Checks.Enroute;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>A planned leg with all that a check may look at.</summary>
internal sealed class LegUnderCheck
{
    private readonly Lazy<ImmutableArray<WaterPoint>> _water;
    private readonly Dictionary<string, Crews.DutyRecord> _duties = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Makes it.</summary>
    /// <param name="plan">The leg.</param>
    /// <param name="week">The week it stands in.</param>
    /// <param name="forecasts">Forecasts known.</param>
    public LegUnderCheck(LegPlan.Planned plan, WeekUnderCheck week, Forecasts forecasts)
    {
        Plan = plan;
        Week = week;
        Forecasts = forecasts;
        Facts = LegFacts.Of(plan);
        _water = new Lazy<ImmutableArray<WaterPoint>>(() => OverWater.Points(this), LazyThreadSafetyMode.None);
    }

    /// <summary>The leg.</summary>
    public LegPlan.Planned Plan { get; }

    /// <summary>The week it stands in.</summary>
    public WeekUnderCheck Week { get; }

    /// <summary>Forecasts known.</summary>
    public Forecasts Forecasts { get; }

    /// <summary>The facts that decide which rules hold.</summary>
    public LegFacts Facts { get; }

    /// <summary>The profile as a row of points with their distance to land.</summary>
    public ImmutableArray<WaterPoint> Water => _water.Value;

    /// <summary>The operator.</summary>
    public Operator Operator => Week.Plan.Input.Operator;

    /// <summary>The type.</summary>
    public AircraftType Type => Plan.Type;

    /// <summary>The aircraft.</summary>
    public Aircraft Aircraft => Plan.Aircraft;

    /// <summary>A cell of the leg's row.</summary>
    /// <param name="field">Property name of <see cref="Leg"/>.</param>
    public string Cell(string field) => Plan.Leg.Origin.Cell(field);

    /// <summary>A cell of the type's row.</summary>
    /// <param name="field">Property name of <see cref="AircraftType"/>.</param>
    public string TypeCell(string field) => Type.Origin.Cell(field);

    /// <summary>The step of the aircraft's chain; null where the chain does not hold the leg.</summary>
    public ChainStep? AircraftStep => Week.Aircraft(Aircraft.Registration)?.Steps.FirstOrDefault(step => step.Leg == Plan.Key);

    /// <summary>Pilots as the leg names them: code, role, row of the Crew sheet (null where the code is not there), cell.</summary>
    public IEnumerable<Seat> Seats
    {
        get
        {
            yield return new Seat(Plan.Leg.Captain, "captain", IsCaptain: true, Plan.Captain, Cell(nameof(Leg.Captain)));
            if (Plan.Leg.SecondPilot.Length > 0)
            {
                yield return new Seat(Plan.Leg.SecondPilot, "second pilot", IsCaptain: false, Plan.SecondPilot, Cell(nameof(Leg.SecondPilot)));
            }
        }
    }

    /// <summary>What is known of a pilot's flying and duty, with this leg as it is looked at.</summary>
    /// <param name="code">Code of the pilot.</param>
    public Crews.DutyRecord Duty(string code)
    {
        if (!_duties.TryGetValue(code, out var record))
        {
            _duties.Add(code, record = new Crews.DutyRecord(this, code));
        }

        return record;
    }

    /// <summary>The local date on which the leg ends, at the destination.</summary>
    public LocalDate EndDate => Plan.Times.OnBlocks.InZone(Plan.To.Zone).Date;

    /// <summary>A pilot of the leg.</summary>
    /// <param name="Code">Code as written.</param>
    /// <param name="Role">Role in words.</param>
    /// <param name="IsCaptain">Whether the captain.</param>
    /// <param name="Member">Row of the Crew sheet; null where the code is not there.</param>
    /// <param name="Cell">Cell of the code.</param>
    internal sealed record Seat(string Code, string Role, bool IsCaptain, CrewMember? Member, string Cell);
}
