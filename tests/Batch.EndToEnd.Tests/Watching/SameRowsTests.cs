using System.Collections;
using System.Reflection;
using Batch.Books;
using Batch.Cli.Pipeline;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.EndToEnd.Tests.Watching;

/// <summary>No member of a week escapes the comparison by which <c>watch</c> keeps what it has: a new one fails here until it is taken in.</summary>
public sealed class SameRowsTests
{
    /// <summary>Members that are made anew by each reading, and read anew by each run.</summary>
    private static readonly string[] MadeAnew = [nameof(OperatorWeek.Inputs), nameof(OperatorWeek.Problems)];

    /// <summary>Members whose rows are compared one by one for each leg.</summary>
    private static readonly string[] OfALeg =
        [nameof(OperatorWeek.Legs), nameof(OperatorWeek.BrokenLegs), nameof(OperatorWeek.Manifest), nameof(OperatorWeek.Cargo)];

    private static readonly PropertyInfo[] Members = typeof(OperatorWeek).GetProperties().Where(member => member.CanWrite).ToArray();

    private static readonly OperatorWeek Before = Read();
    private static readonly OperatorWeek Now = Read();

    public static TheoryData<string> Names => [.. Members.Select(member => member.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_member_that_says_the_same_is_put_back(string name)
    {
        var member = Members.Single(member => member.Name == name);
        Assert.NotEmpty(member.GetValue(Before) as IEnumerable ?? new object[] { Before });
        Assert.Equal(!MadeAnew.Contains(name), IsOne(member.GetValue(SameRows.Of(Now, Before)), member.GetValue(Before)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_member_that_is_another_object_is_seen_unless_it_is_of_a_leg(string name)
    {
        var member = Members.Single(member => member.Name == name);
        var other = Before with { };
        Assert.True(other.HasReferencesOf(Before));
        member.SetValue(other, member.GetValue(Now));
        Assert.Equal(MadeAnew.Contains(name) || OfALeg.Contains(name), other.HasReferencesOf(Before));
    }

    private static OperatorWeek Read() => BookReader.Read([RepositoryRoot.PathOf("input-samples")]);

    /// <summary>Whether two values are the same object; lists are equal where they hold the same array.</summary>
    private static bool IsOne(object? one, object? other) => ReferenceEquals(one, other) || (one is ValueType && one.Equals(other));
}
