using Batch.Flight.Week;

namespace Batch.Checks.Remedies;

/// <summary>A change of the week: rows as they would read after some cells were typed anew.</summary>
/// <param name="Text">What is done, in the dispatcher's words, without the cells.</param>
/// <param name="Disruption">How much it disturbs, 1 least; see <see cref="Disruptions"/>.</param>
internal sealed record WeekEdit(string Text, int Disruption)
{
    /// <summary>Rows of Legs, before and after.</summary>
    public ImmutableArray<(Leg Before, Leg After)> Legs { get; init; } = [];

    /// <summary>Legs that are added.</summary>
    public ImmutableArray<Leg> Added { get; init; } = [];

    /// <summary>Rows of Manifest, before and after; null where the row is cleared.</summary>
    public ImmutableArray<(ManifestLine Before, ManifestLine? After)> Manifest { get; init; } = [];

    /// <summary>Rows of Cargo, before and after; null where the row is cleared.</summary>
    public ImmutableArray<(CargoLine Before, CargoLine? After)> Cargo { get; init; } = [];

    /// <summary>What is typed, by cell.</summary>
    public ImmutableSortedDictionary<string, string> Changes { get; init; } = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>Whether cells of the books can say it: no column is missing, no row is added.</summary>
    public bool IsWritable { get; init; } = true;

    /// <summary>Where and what is typed, in words.</summary>
    public ImmutableArray<string> Places { get; init; } = [];

    /// <summary>The whole sentence, with the cells.</summary>
    public string Sentence => Places.IsEmpty ? Text : $"{Text} ({string.Join("; ", Places)})";

    /// <summary>The change with a leg changed besides.</summary>
    /// <param name="before">The row.</param>
    /// <param name="after">The row after it.</param>
    /// <param name="cells">Fields and what is typed there.</param>
    public WeekEdit With(Leg before, Leg after, params (string Field, string Typed)[] cells) =>
        Typed(before.Origin, cells) with { Legs = Legs.Add((before, after)) };

    /// <summary>The change with a passenger's row changed besides.</summary>
    /// <param name="before">The row.</param>
    /// <param name="after">The row after it.</param>
    /// <param name="cells">Fields and what is typed there.</param>
    public WeekEdit With(ManifestLine before, ManifestLine after, params (string Field, string Typed)[] cells) =>
        Typed(before.Origin, cells) with { Manifest = Manifest.Add((before, after)) };

    /// <summary>The change with a row of cargo changed besides.</summary>
    /// <param name="before">The row.</param>
    /// <param name="after">The row after it.</param>
    /// <param name="cells">Fields and what is typed there.</param>
    public WeekEdit With(CargoLine before, CargoLine after, params (string Field, string Typed)[] cells) =>
        Typed(before.Origin, cells) with { Cargo = Cargo.Add((before, after)) };

    /// <summary>The change with a passenger's row cleared besides.</summary>
    /// <param name="line">The row.</param>
    public WeekEdit Without(ManifestLine line) => Cleared(
        line.Origin,
        nameof(ManifestLine.Trip),
        nameof(ManifestLine.Legs),
        nameof(ManifestLine.Name),
        nameof(ManifestLine.Category),
        nameof(ManifestLine.Weight),
        nameof(ManifestLine.WeightBasis),
        nameof(ManifestLine.Bags),
        nameof(ManifestLine.BagCount),
        nameof(ManifestLine.Seat),
        nameof(ManifestLine.Notes)) with
    { Manifest = Manifest.Add((line, null)) };

    /// <summary>The change with a row of cargo cleared besides.</summary>
    /// <param name="line">The row.</param>
    public WeekEdit Without(CargoLine line) => Cleared(
        line.Origin,
        nameof(CargoLine.Trip),
        nameof(CargoLine.Legs),
        nameof(CargoLine.What),
        nameof(CargoLine.Weight),
        nameof(CargoLine.Station),
        nameof(CargoLine.Notes)) with
    { Cargo = Cargo.Add((line, null)) };

    /// <summary>The week after the change.</summary>
    /// <param name="week">The week.</param>
    public OperatorWeek ApplyTo(OperatorWeek week) => week with
    {
        Legs = Replaced(week.Legs, Legs.Select(pair => (pair.Before, (Leg?)pair.After))).AddRange(Added),
        Manifest = Replaced(week.Manifest, Manifest),
        Cargo = Replaced(week.Cargo, Cargo),
    };

    private static ImmutableArray<T> Replaced<T>(ImmutableArray<T> rows, IEnumerable<(T Before, T? After)> changes)
        where T : class
    {
        var all = changes.ToImmutableArray();
        if (all.IsEmpty)
        {
            return rows;
        }

        var builder = ImmutableArray.CreateBuilder<T>(rows.Length);
        foreach (var row in rows)
        {
            var at = 0;
            while (at < all.Length && !ReferenceEquals(all[at].Before, row))
            {
                at++;
            }

            if (at == all.Length)
            {
                builder.Add(row);
            }
            else if (all[at].After is { } after)
            {
                builder.Add(after);
            }
        }

        return builder.ToImmutable();
    }

    private WeekEdit Cleared(Origin row, params string[] fields) => this with
    {
        Changes = Changes.SetItems(fields.Where(row.HasColumn).Select(field => KeyValuePair.Create(row.Cell(field), ""))),
        IsWritable = IsWritable && row.Row > 0,
        Places = row.Row > 0 ? Places.Add($"clear row {row}") : Places,
    };

    private WeekEdit Typed(Origin row, (string Field, string Typed)[] cells)
    {
        var edit = this;
        foreach (var (field, typed) in cells)
        {
            edit = row.HasColumn(field)
                ? edit with
                {
                    Changes = edit.Changes.SetItem(row.Cell(field), typed),
                    Places = edit.Places.Add(typed.Length > 0 ? $"{row.Cell(field)}: {typed}" : $"clear {row.Cell(field)}")
                }
                : edit with { IsWritable = false, Places = edit.Places.Add($"row {row} has no column for it yet: {typed}") };
        }

        return edit;
    }
}
