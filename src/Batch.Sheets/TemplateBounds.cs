namespace Batch.Sheets;

/// <summary>How much a template may take. Whatever is exceeded is a problem of the template, never a cut-off page.</summary>
public sealed record TemplateBounds
{
    /// <summary>Longest time for one sheet, by the clock and in work of the program: a machine that is busy with other things does not cost a sheet.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>Longest page [characters].</summary>
    public int Output { get; init; } = 30_000_000;

    /// <summary>Most steps of one loop, loops inside it counted with it.</summary>
    public int LoopSteps { get; init; } = 2_000_000;

    /// <summary>Deepest nesting of includes and functions.</summary>
    public int Depth { get; init; } = 40;
}
