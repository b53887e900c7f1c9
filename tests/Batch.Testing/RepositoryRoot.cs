namespace Batch.Testing;

/// <summary>Where the repository stands, found by walking up from the test program to the folder that holds <c>Batch.sln</c>.</summary>
public static class RepositoryRoot
{
    /// <summary>The folder that holds <c>Batch.sln</c>.</summary>
    public static readonly string Folder = Find();

    /// <summary>A path below the root.</summary>
    /// <param name="parts">Names of folders and file, outermost first.</param>
    public static string PathOf(params string[] parts) => Path.Combine([Folder, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Batch.sln"))) return folder.FullName;
        }

        throw new DirectoryNotFoundException($"No folder above {AppContext.BaseDirectory} holds Batch.sln.");
    }
}
