namespace Batch.Sheets;

/// <summary>The values that a template can use. Made by <see cref="SheetModels"/>; listed by <see cref="TemplateValues"/>.</summary>
public abstract record SheetModel
{
    private protected SheetModel()
    {
    }
}
