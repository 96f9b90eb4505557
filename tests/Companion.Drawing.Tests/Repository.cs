namespace Companion.Drawing.Tests;

/// <summary>The files of the repository that the tests lie in.</summary>
internal static class Repository
{
    internal static string File(string path)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "Companion.sln")))
                return Path.Combine(folder.FullName, path);
        }

        throw new DirectoryNotFoundException($"No folder above {AppContext.BaseDirectory} holds Companion.sln.");
    }
}
