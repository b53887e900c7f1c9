namespace Batch.Checks.Rules;

/// <summary>Whether a condition holds.</summary>
internal enum Holds
{
    /// <summary>It does not.</summary>
    No,

    /// <summary>A fact that it depends on is not known.</summary>
    Unknown,

    /// <summary>It does.</summary>
    Yes,
}
