namespace Batch.Books.Headers;

/// <summary>A sheet as declared: its name and its columns.</summary>
internal sealed class SheetPlan(string name, string book, string meaning)
{
    private readonly List<Column> _columns = [];
    private readonly List<Column> _items = [];
    private readonly HashSet<Column> _amounts = [];

    /// <summary>Name of the sheet.</summary>
    public string Name => name;

    /// <summary>The book it usually stands in: <c>week</c> or <c>operator</c>.</summary>
    public string Book => book;

    /// <summary>What it is for.</summary>
    public string Meaning => meaning;

    /// <summary>Its columns in the order in which they are offered.</summary>
    public IReadOnlyList<Column> Columns => _columns;

    /// <summary>Its items, where each row is an item with a value of its own kind.</summary>
    public IReadOnlyList<Column> Items => _items;

    /// <summary>Whether columns of any other name have a meaning of their own here.</summary>
    public bool IsOpen { get; init; }

    /// <summary>Declares a column.</summary>
    public Column<T> Add<T>(Column<T> column)
    {
        _columns.Add(column);
        return column;
    }

    /// <summary>Declares a column of amounts that add up: one cell merged over several rows may mean the amount of each or of all together.</summary>
    public Column<T> AddAmount<T>(Column<T> column)
    {
        _amounts.Add(column);
        return Add(column);
    }

    /// <summary>Whether the amounts of a column add up.</summary>
    public bool IsAmount(Column column) => _amounts.Contains(column);

    /// <summary>Declares an item.</summary>
    public Column<T> AddItem<T>(Column<T> item)
    {
        _items.Add(item);
        return item;
    }
}
