using Batch.Sheets.Pictures;

namespace Batch.Sheets.Templates;

/// <summary>A picture that a template writes as it is, or with words and units of its own.</summary>
/// <param name="Draw">Draws it.</param>
internal sealed record Picture(Func<PictureStyle, Markup> Draw)
{
    /// <summary>The picture in English and pounds.</summary>
    public Markup Usual => Draw(PictureStyle.Usual);
}
