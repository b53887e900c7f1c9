using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Headers;

/// <summary>A column of a sheet as declared: what it is called, what it holds, what it means.</summary>
internal abstract class Column
{
    /// <summary>Name as written in headers.</summary>
    public required string Name { get; init; }

    /// <summary>Property name by which the origin of a row knows it.</summary>
    public required string Field { get; init; }

    /// <summary>One sentence for the person who fills it.</summary>
    public required string Meaning { get; init; }

    /// <summary>Whether every row needs it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Other names understood.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>What its numbers are; null where it holds no quantity.</summary>
    public Quantity? Quantity { get; init; }

    /// <summary>Whether its header is offered without a unit although numbers in it have one.</summary>
    public bool IsBare { get; init; }

    /// <summary>The words it may hold, where it is limited to a list.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>What a cell is read as.</summary>
    public abstract Type ValueType { get; }

    /// <summary>What a cell means, whatever that is; null where it is blank or cannot be read.</summary>
    public abstract object? ValueOf(RawCell cell, CellSetting setting);
}

/// <summary>A column and how its cells are read.</summary>
/// <typeparam name="T">What is read.</typeparam>
internal sealed class Column<T> : Column
{
    /// <summary>Reads one cell that is neither blank nor an error value.</summary>
    public required Func<RawCell, CellSetting, Reading<T>> Read { get; init; }

    /// <inheritdoc/>
    public override Type ValueType => typeof(T);

    /// <inheritdoc/>
    public override object? ValueOf(RawCell cell, CellSetting setting) =>
        !cell.IsBlank && cell.Kind != CellKind.Error && Read(cell, setting) is { IsGood: true } reading ? reading.Value : null;
}
