namespace Batch.Checks;

/// <summary>A rule set was asked for that the program does not have.</summary>
public sealed class UnknownRuleSetException : Exception
{
    /// <summary>Makes it.</summary>
    /// <param name="name">Name asked for.</param>
    /// <param name="near">Names there are, nearest first.</param>
    public UnknownRuleSetException(string name, ImmutableArray<string> near)
        : base(name.Trim().Length == 0
            ? $"No rule set is named; there are {string.Join(", ", near)}"
            : $"'{name}' is not a rule set; did you mean {near[0]}? There are {string.Join(", ", near)}")
    {
        Name = name;
        Near = near;
    }

    /// <summary>Name asked for.</summary>
    public string Name { get; }

    /// <summary>Names there are, nearest first.</summary>
    public ImmutableArray<string> Near { get; }
}
