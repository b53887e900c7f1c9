using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;

namespace Batch.Cli.Pipeline;

/// <summary>
/// Whether two values say the same all the way down: records by every field, lists by every item. Unlike the equality of records it looks into lists. In doubt
/// the answer is no: functions, and tables that hold the same in another order, are not the same.
/// </summary>
internal static class SameValue
{
    private const BindingFlags Own = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private static readonly ConcurrentDictionary<Type, FieldInfo[]> Known = [];

    /// <summary>Whether they do.</summary>
    /// <param name="one">A value.</param>
    /// <param name="other">Another.</param>
    public static bool Is(object? one, object? other)
    {
        if (ReferenceEquals(one, other)) return true;
        if (one is null || other is null || one.GetType() != other.GetType()) return false;
        var type = one.GetType();
        if (one is double number && other is double same) return BitConverter.DoubleToInt64Bits(number) == BitConverter.DoubleToInt64Bits(same);
        if (one is string || type.IsPrimitive || type.IsEnum || IsOfTime(type)) return one.Equals(other);
        if (one is Delegate) return false;
        if (one is IDictionary || type.IsArray) return AreSame((IEnumerable)one, (IEnumerable)other);
        return Array.TrueForAll(Fields(type), field => Is(field.GetValue(one), field.GetValue(other)));
    }

    private static bool AreSame(IEnumerable one, IEnumerable other)
    {
        var (left, right) = (one.GetEnumerator(), other.GetEnumerator());
        using (left as IDisposable)
        using (right as IDisposable)
        {
            while (left.MoveNext())
            {
                if (!right.MoveNext() || !Is(left.Current, right.Current)) return false;
            }

            return !right.MoveNext();
        }
    }

    private static bool IsOfTime(Type type) => type.Namespace?.StartsWith("NodaTime", StringComparison.Ordinal) == true;

    private static FieldInfo[] Fields(Type type) => Known.GetOrAdd(type, static of =>
    {
        var fields = new List<FieldInfo>();
        for (var at = of; at is not null && at != typeof(object); at = at.BaseType) fields.AddRange(at.GetFields(Own));
        return [.. fields];
    });
}
