namespace Batch.Checks.Rules;

/// <summary>How well the basis of a rule is known.</summary>
internal enum RuleMark
{
    /// <summary>V: the rule's text was read.</summary>
    Verified,

    /// <summary>V2: read in a secondary reproduction only.</summary>
    Secondary,

    /// <summary>M: from memory.</summary>
    FromMemory,

    /// <summary>O: the limit is the operator's own, from the books; there is no rule text to confirm.</summary>
    OperatorBook,
}
