using System.Runtime.CompilerServices;
using Batch.Flight.Fleet;

namespace Batch.Checks.Rules;

/// <summary>Legs that are planned by the same rules: of equal facts, under the same operator object.</summary>
internal sealed class PlannedAlike : IEqualityComparer<(LegFacts Facts, Operator Operator)>
{
    /// <summary>The one there is.</summary>
    public static PlannedAlike Instance { get; } = new();

    /// <inheritdoc/>
    public bool Equals((LegFacts Facts, Operator Operator) x, (LegFacts Facts, Operator Operator) y) =>
        ReferenceEquals(x.Operator, y.Operator) && x.Facts == y.Facts;

    /// <inheritdoc/>
    public int GetHashCode((LegFacts Facts, Operator Operator) obj) => HashCode.Combine(obj.Facts, RuntimeHelpers.GetHashCode(obj.Operator));
}
