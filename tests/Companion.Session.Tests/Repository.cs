namespace Companion.Session.Tests;

/// <summary>The repository that the test program was built from, for tests of the files that ship.</summary>
internal static class Repository
{
    /// <summary>The folder that holds <c>Companion.sln</c>.</summary>
    internal static string Root { get; } = FindRoot();

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Companion.sln")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException($"No folder above {AppContext.BaseDirectory} holds Companion.sln.");
    }
}
