using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>The templates a command was told to use.</summary>
public static class TemplateReading
{
    /// <summary>The shipped templates, with those of a folder in their place.</summary>
    /// <param name="folder">The folder; null for the shipped ones alone.</param>
    /// <param name="option">Option that named the folder, for the complaint; empty for none.</param>
    /// <exception cref="InputException">There is no such folder, or it cannot be read.</exception>
    public static TemplateFolder Of(string? folder, string option)
    {
        if (folder is null) return TemplateFolder.Shipped;
        var named = $"{option} {folder}".TrimStart();
        if (!Directory.Exists(folder)) throw new InputException($"{named}: there is no such folder.");
        try
        {
            return TemplateFolder.Over(folder);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"{named} cannot be read: {error.Message}", error);
        }
    }
}
