namespace Batch.Books.Files;

/// <summary>Replaces a file so that at every moment either the old or the new one stands there whole.</summary>
internal static class SafeFile
{
    /// <summary>
    /// Writes the new content beside the file, keeps the old one as <c>.bak</c>, and swaps. Who may read it stays as it was; of a link the file that it names
    /// is replaced.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Its new content.</param>
    /// <returns>Path of the copy of the old one.</returns>
    /// <exception cref="BookException">It cannot be written, or is write-protected.</exception>
    public static string Replace(string path, byte[] content)
    {
        try
        {
            var place = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
            if (new FileInfo(place).IsReadOnly) throw new BookException($"{Path.GetFileName(path)} is write-protected; it stands as it was");
            var (fresh, backup) = (place + ".tripbatch-new", place + ".bak");
            try
            {
                File.Copy(place, fresh, overwrite: true);
                File.WriteAllBytes(fresh, content);
                File.Copy(place, backup, overwrite: true);
                File.Move(fresh, place, overwrite: true);
                return backup;
            }
            finally
            {
                File.Delete(fresh);
            }
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{Path.GetFileName(path)} cannot be written ({thrown.Message.TrimEnd('.')}); it stands as it was", thrown);
        }
    }
}
