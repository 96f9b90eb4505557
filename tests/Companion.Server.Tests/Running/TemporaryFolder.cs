namespace Companion.Server.Tests.Running;

/// <summary>A folder of its own for one test, gone with it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("companion-test-").FullName;

    public string In(params ReadOnlySpan<string> names) => System.IO.Path.Combine([Path, .. names]);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
