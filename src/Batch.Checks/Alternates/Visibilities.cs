using Batch.Checks.Rules;

namespace Batch.Checks.Alternates;

/// <summary>Visibilities of the rules in metres.</summary>
internal static class Visibilities
{
    /// <summary>Metres in a statute mile [m], exact (international yard 1959; NIST SP 811).</summary>
    public const double MetresPerStatuteMile = 1609.344;

    /// <summary>A visibility [m].</summary>
    /// <param name="visibility">The amount, in SM or m.</param>
    public static double Metres(RuleAmount visibility) => visibility.Unit == "SM" ? visibility.Value * MetresPerStatuteMile : visibility.Value;
}
