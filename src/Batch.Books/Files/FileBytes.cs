namespace Batch.Books.Files;

/// <summary>Reads a file whole, also while another program has it open.</summary>
internal static class FileBytes
{
    /// <summary>The bytes.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="name">Its name, for refusals.</param>
    /// <param name="greatest">Most bytes that are read [B].</param>
    /// <returns>Nothing where the file is empty, a pipe or a device.</returns>
    /// <exception cref="BookException">It cannot be opened or is too large.</exception>
    public static byte[] Read(string path, string name, long greatest)
    {
        try
        {
            // A pipe has no length either, and opening it would wait for whoever writes into it.
            if ((File.ResolveLinkTarget(path, returnFinalTarget: true) ?? new FileInfo(path)) is FileInfo { Exists: true, Length: 0 }) return [];
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (file.Length > greatest) throw TooLarge(name);
            using var copy = new MemoryStream((int)file.Length);
            var piece = new byte[81920];
            for (int read; (read = file.Read(piece)) > 0;)
            {
                if (copy.Length + read > greatest) throw TooLarge(name);
                copy.Write(piece, 0, read);
            }

            return copy.ToArray();
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{name} cannot be opened: {thrown.Message}", thrown);
        }
    }

    private static BookException TooLarge(string name) => new($"{name} is too large to be a week's book");
}
