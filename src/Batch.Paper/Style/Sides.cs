namespace Batch.Paper.Style;

/// <summary>A value for each side (or corner, clockwise from top left).</summary>
internal readonly record struct Sides<T>(T Top, T Right, T Bottom, T Left)
{
    public T this[int side] => side switch { 0 => Top, 1 => Right, 2 => Bottom, _ => Left };

    public Sides<T> With(int side, T value) => side switch
    {
        0 => this with { Top = value },
        1 => this with { Right = value },
        2 => this with { Bottom = value },
        _ => this with { Left = value },
    };

    public Sides<TOut> Select<TOut>(Func<T, TOut> of) => new(of(Top), of(Right), of(Bottom), of(Left));
}
