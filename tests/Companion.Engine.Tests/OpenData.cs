namespace Companion.Engine.Tests;

/// <summary>
/// The open puzzle files that lie beside the repository, in <c>../shared/data</c>. They are no part of it: a test that needs
/// them is reported as skipped where they are absent.
/// </summary>
internal static class OpenData
{
    private static readonly string? Folder = FindFolder();

    /// <summary>Whether the file is there.</summary>
    public static bool Has(string fileName) => Folder is not null && File.Exists(Path.Combine(Folder, fileName));

    /// <summary>
    /// The lines of a file that are not empty; skips the running test, with the reason, where the file is absent.
    /// </summary>
    /// <param name="fileName">The name in the folder, such as <c>essay-top95.txt</c>.</param>
    /// <param name="hasHeader">Whether the first line names the columns and is left out.</param>
    public static string[] Lines(string fileName, bool hasHeader = false)
    {
        if (!Has(fileName))
            Assert.Skip($"The open puzzle file {fileName} is not there: put it in a folder shared/data beside the repository.");
        return [.. File.ReadLines(Path.Combine(Folder!, fileName)).Skip(hasHeader ? 1 : 0).Where(line => line.Length > 0)];
    }

    /// <summary>The puzzles of a file, one of so many; skips as <see cref="Lines"/> does.</summary>
    /// <param name="fileName">The name in the folder; one that ends in <c>.tsv</c> has a header and the puzzle in its first
    /// column.</param>
    /// <param name="oneOf">1 for all of them, 10 for the first, the eleventh and so on.</param>
    public static IEnumerable<string> Puzzles(string fileName, int oneOf = 1) =>
        Lines(fileName, hasHeader: fileName.EndsWith(".tsv", StringComparison.Ordinal))
            .Where((_, place) => place % oneOf == 0)
            .Select(line => line[..Cell.Count]);

    // The nearest one on the way up from the test program, so that a work tree deeper down finds the same folder.
    private static string? FindFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var data = Path.Combine(folder.FullName, "shared", "data");
            if (Directory.Exists(data))
                return data;
        }

        return null;
    }
}
