namespace Batch.Books.Cells;

/// <summary>What was made of one cell: a value, perhaps with a caution, or a complaint.</summary>
/// <typeparam name="T">What was sought.</typeparam>
internal readonly record struct Reading<T>
{
    private Reading(bool isGood, T? value, string complaint, string expected)
    {
        IsGood = isGood;
        Value = value;
        Complaint = complaint;
        Expected = expected;
    }

    /// <summary>Whether there is a value.</summary>
    public bool IsGood { get; }

    /// <summary>The value; default where there is none.</summary>
    public T? Value { get; }

    /// <summary>
    /// What is wrong, or, beside a value, what was assumed; empty for nothing. A clause that follows the column name: <c>is not a number</c>.
    /// </summary>
    public string Complaint { get; }

    /// <summary>What would have been understood.</summary>
    public string Expected { get; }

    /// <summary>A value.</summary>
    public static Reading<T> Good(T value, string caution = "", string expected = "") => new(true, value, caution, expected);

    /// <summary>No value.</summary>
    public static Reading<T> Bad(string complaint, string expected) => new(false, default, complaint, expected);

    /// <summary>The same complaint or caution about a value made from this one.</summary>
    public Reading<TOther> Then<TOther>(Func<T, TOther> make) =>
        IsGood && Value is { } value ? Reading<TOther>.Good(make(value), Complaint, Expected) : Reading<TOther>.Bad(Complaint, Expected);
}
