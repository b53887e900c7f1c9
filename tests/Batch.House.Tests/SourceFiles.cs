using Batch.Testing;

namespace Batch.House.Tests;

/// <summary>The files of the project that people write.</summary>
internal static class SourceFiles
{
    /// <summary>Paths of the C# files under a folder of the project, build output left out.</summary>
    /// <param name="folder">Folder below the project's root.</param>
    public static IEnumerable<string> CSharp(string folder) => All(folder, "*.cs");

    /// <summary>Paths of the files under a folder of the project that match a pattern, build output left out.</summary>
    /// <param name="folder">Folder below the project's root.</param>
    /// <param name="pattern">Pattern of file names.</param>
    public static IEnumerable<string> All(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(RepositoryRoot.Folder, folder), pattern, SearchOption.AllDirectories)
            .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal);
}
