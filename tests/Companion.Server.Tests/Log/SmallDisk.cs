using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Log;

/// <summary>
/// A companion whose data folder is a disk of its own, of four megabytes, which this test can fill up. The disk is in memory and in
/// a mount namespace of the process alone, which takes no rights and goes with it.
/// </summary>
internal sealed class SmallDisk : IAsyncDisposable
{
    private const string Mount = """mount -t tmpfs -o size=4m,mode=700 tmpfs "$0" && """;
    private const string Fillup = """{ cat /dev/zero > "$0/filler"; true; } && """;

    private readonly TemporaryFolder _folder = new();

    private CompanionProcess? _companion;

    /// <summary>The companion.</summary>
    public CompanionProcess Companion => _companion!;

    // The process's own view of the folder.
    private string Seen => $"/proc/{Companion.ProcessId}/root{_folder.Path}";

    /// <summary>Starts a companion on an empty small disk; skips the test where the system allows no such disk.</summary>
    public static async Task<SmallDisk> Serve()
    {
        await SkipWhereForbidden();
        var disk = new SmallDisk();
        disk._companion = await CompanionProcess.Serve(disk._folder.Path, Inside(disk._folder, Mount));
        return disk;
    }

    /// <summary>Tries to start a companion on a full disk.</summary>
    /// <returns>How it ended.</returns>
    public static async Task<(int ExitCode, string Error)> ServeOnFull()
    {
        await SkipWhereForbidden();
        using var folder = new TemporaryFolder();
        var (code, _, error) = await CompanionProcess.RunInside(Inside(folder, Mount + Fillup), "--port", "0", "--data", folder.Path);
        return (code, error);
    }

    /// <summary>Fills the disk up to its last byte.</summary>
    public void Fill()
    {
        using var filler = new FileStream(Path.Combine(Seen, "filler"), FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        foreach (var size in new[] { 4096, 1 })
        {
            try
            {
                while (true)
                    filler.Write(new byte[size]);
            }
            catch (IOException)
            {
                // Full, as far as pieces of this size go.
            }
        }
    }

    /// <summary>Frees what was filled.</summary>
    public void Free() => File.Delete(Path.Combine(Seen, "filler"));

    /// <summary>Ends the companion at once, and leaves a copy of its log behind as it was before.</summary>
    public async Task<TemporaryFolder> KillAndKeepLog()
    {
        var copy = new TemporaryFolder();
        foreach (var file in Directory.GetFiles(Seen, "events.db*"))
            File.Copy(file, copy.In(Path.GetFileName(file)));
        await Companion.Kill();
        return copy;
    }

    /// <summary>Stops the companion as the system does. Ctrl+C does the same, but its signal is ignored where tests run in the background.</summary>
    /// <returns>Its exit code.</returns>
    public async Task<int> Stop()
    {
        await Shell.Run($"kill -TERM {Companion.ProcessId}");
        return await Companion.Ends();
    }

    public async ValueTask DisposeAsync()
    {
        await Companion.DisposeAsync();
        _folder.Dispose();
    }

    // The folder and the program come after the script.
    private static string[] Inside(TemporaryFolder folder, string script) =>
        ["unshare", "--user", "--map-root-user", "--mount", "sh", "-c", script + """exec "$@" """, folder.Path];

    private static async Task SkipWhereForbidden()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Namespaces of mounts are Linux's.");
        try
        {
            await Shell.Run("unshare --user --map-root-user --mount true");
        }
        catch (InvalidOperationException forbidden)
        {
            Assert.Skip($"This system lets nobody have mounts of their own: {forbidden.Message}");
        }
    }
}
