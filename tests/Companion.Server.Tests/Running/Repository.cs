namespace Companion.Server.Tests.Running;

/// <summary>The work tree that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string In(params ReadOnlySpan<string> names) => Path.Combine([Root, .. names]);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Companion.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("These tests run inside the repository only.");
    }
}
