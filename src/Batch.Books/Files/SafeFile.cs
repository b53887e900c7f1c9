namespace Batch.Books.Files;

/// <summary>Replaces a file so that at every moment either the old or the new one stands there whole.</summary>
internal static class SafeFile
{
    /// <summary>Writes the new content beside the file, keeps the old one as <c>.bak</c>, and swaps.</summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Its new content.</param>
    /// <returns>Path of the copy of the old one.</returns>
    /// <exception cref="BookException">It cannot be written.</exception>
    public static string Replace(string path, byte[] content)
    {
        var (fresh, backup) = (path + ".tripbatch-new", path + ".bak");
        try
        {
            File.WriteAllBytes(fresh, content);
            File.Copy(path, backup, overwrite: true);
            File.Move(fresh, path, overwrite: true);
            return backup;
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{Path.GetFileName(path)} cannot be written ({thrown.Message.TrimEnd('.')}); it stands as it was", thrown);
        }
    }
}
