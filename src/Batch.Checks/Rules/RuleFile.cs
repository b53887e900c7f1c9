using System.Text.Json;
using Batch.Flight.Plan;

namespace Batch.Checks.Rules;

/// <summary>A rule file as it is written; see <see cref="RuleFileReader"/>.</summary>
internal sealed record RuleFile
{
    /// <summary>Name, such as <c>us-charter</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Year and month of the rule texts, such as <c>2026-09</c>.</summary>
    public required string Date { get; init; }

    /// <summary>What it is for.</summary>
    public required string About { get; init; }

    /// <summary>What the marks mean.</summary>
    public required ImmutableSortedDictionary<string, string> Marks { get; init; }

    /// <summary>
    /// The height from which altimeters are set to 29.92 inches [ft] and a filed level is a flight level; null where each airport has its own.
    /// </summary>
    public double? FlightLevelsFrom { get; init; }

    /// <summary>Paragraph of that height; empty where none is given.</summary>
    public string FlightLevelsCite { get; init; } = "";

    /// <summary>Its rules.</summary>
    public required ImmutableArray<Entry> Rules { get; init; }

    /// <summary>One rule as it is written.</summary>
    internal sealed record Entry
    {
        /// <summary>Check it serves.</summary>
        public required string Check { get; init; }

        /// <summary>Part of the check that it is for.</summary>
        public string Part { get; init; } = "";

        /// <summary>The least value.</summary>
        public double? AtLeast { get; init; }

        /// <summary>The greatest value.</summary>
        public double? AtMost { get; init; }

        /// <summary><c>atMost</c> or <c>atLeast</c> where the rules name the part and leave its number to the operator: the Checks sheet gives it.</summary>
        public string Own { get; init; } = "";

        /// <summary>Unit of the value.</summary>
        public string Unit { get; init; } = "";

        /// <summary>How a reserve time becomes fuel.</summary>
        public ReserveBasis? Basis { get; init; }

        /// <summary>When it holds.</summary>
        public RuleCondition When { get; init; } = new();

        /// <summary>How serious it is when not met.</summary>
        public required State State { get; init; }

        /// <summary>Document and paragraph.</summary>
        public required string Cite { get; init; }

        /// <summary>V, V2, M or O.</summary>
        public required string Mark { get; init; }

        /// <summary>What it says.</summary>
        public required string Says { get; init; }

        /// <summary>The rule it means.</summary>
        /// <exception cref="JsonException">It contradicts itself.</exception>
        public Rule ToRule()
        {
            if (AtLeast is not null && AtMost is not null || Part.Length == 0 && (AtLeast ?? AtMost).HasValue)
            {
                throw new JsonException($"A rule of {Check} may give one value, and then names the part it is for");
            }

            if (Own is not ("" or "atMost" or "atLeast") || Own.Length > 0 && (AtLeast ?? AtMost).HasValue)
            {
                throw new JsonException($"A rule of {Check} gives a value, or leaves it to the operator as atMost or atLeast");
            }

            return new Rule
            {
                Check = Check,
                Part = Part,
                Value = AtLeast ?? AtMost,
                Unit = Unit,
                IsLeast = AtLeast is not null || Own == "atLeast",
                IsLeftToOperator = Own.Length > 0,
                Basis = Basis,
                When = When,
                State = State,
                Citation = Cite,
                Mark = Mark switch
                {
                    "V" => RuleMark.Verified,
                    "V2" => RuleMark.Secondary,
                    "M" => RuleMark.FromMemory,
                    "O" => RuleMark.OperatorBook,
                    _ => throw new JsonException($"A rule of {Check} has the mark '{Mark}', which is not known"),
                },
                Says = Says,
            };
        }
    }
}
