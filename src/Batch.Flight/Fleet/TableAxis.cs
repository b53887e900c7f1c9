using System.Runtime.CompilerServices;

namespace Batch.Flight.Fleet;

/// <summary>
/// All keys of one axis of a table, curve after curve, each curve rising; with the place where the curve under each key begins on the next axis.
/// </summary>
internal sealed class TableAxis
{
    private TableAxis(double[] keys, int[] starts) => (Keys, Starts) = (keys, starts);

    /// <summary>The keys; a single NaN a curve where the table does not depend on the axis.</summary>
    public double[] Keys { get; }

    /// <summary>For each key, and once more for the end, the first index of its curve on the next axis.</summary>
    public int[] Starts { get; }

    /// <summary>Number of keys.</summary>
    public int Count => Keys.Length;

    /// <summary>The axes of rows sorted by their keys, without repetition.</summary>
    /// <param name="ordered">The rows in order.</param>
    /// <param name="axes">Number of axes.</param>
    public static ImmutableArray<TableAxis> Nest(TableRow[] ordered, int axes)
    {
        var nested = new TableAxis[axes];
        int[] deeper = [.. Enumerable.Range(0, ordered.Length + 1)];
        for (var axis = axes - 1; axis >= 0; axis--)
        {
            // A key begins where the row differs from the row before on this axis or an outer one; an int in deeper is the index on the next axis of each row.
            var keys = new List<double>();
            var starts = new List<int>();
            var place = new int[ordered.Length + 1];
            for (var row = 0; row < ordered.Length; row++)
            {
                if (row == 0 || !ordered[row].Keys.AsSpan(0, axis + 1).SequenceEqual(ordered[row - 1].Keys.AsSpan(0, axis + 1)))
                {
                    keys.Add(ordered[row].Keys[axis]);
                    starts.Add(deeper[row]);
                }

                place[row] = keys.Count - 1;
            }

            place[^1] = keys.Count;
            starts.Add(deeper[^1]);
            nested[axis] = new TableAxis([.. keys], [.. starts]);
            deeper = place;
        }

        return [.. nested];
    }

    /// <summary>Between which keys of a curve a query lies.</summary>
    /// <param name="first">First index of the curve.</param>
    /// <param name="end">Index after its last key.</param>
    /// <param name="asked">The query; NaN for a curve that does not depend on the axis.</param>
    /// <param name="hint">How far from the start of its curve the last query was found;
    /// the curves of an axis are mostly alike. Set to where this one is found.</param>
    /// <returns>Index of the key at or below, and the fraction of the way to the next, 0 up to but not 1; the end itself outside the curve.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (int At, double Fraction) Find(int first, int end, double asked, ref int hint)
    {
        var keys = Keys.AsSpan();
        if (double.IsNaN(asked) || asked <= keys[first]) return (first, 0);
        if (asked >= keys[end - 1]) return (end - 1, 0);
        var below = first + hint;
        if (below >= end - 1 || !(keys[below] <= asked && asked < keys[below + 1]))
        {
            below = first;
            var above = end - 1;
            while (above - below > 1)
            {
                var middle = (below + above) >> 1;
                if (keys[middle] <= asked) below = middle;
                else above = middle;
            }

            hint = below - first;
        }

        return (below, (asked - keys[below]) / (keys[below + 1] - keys[below]));
    }
}
