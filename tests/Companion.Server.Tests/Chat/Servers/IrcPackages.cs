using System.Diagnostics;
using System.Runtime.InteropServices;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>
/// Where the IRC servers are: Debian's packages, fetched by apt and unpacked into a folder of the build output. Nothing is installed,
/// so no service of theirs starts and no user is made. Where that fails, so do the tests, with the way out; nothing is skipped.
/// </summary>
internal static class IrcPackages
{
    private const string Libraries = "usr/lib";

    private static readonly Lazy<string> Folder = new(Unpack);

    /// <summary>Starts one of the servers as a child process of ours.</summary>
    public static Process Start(string name, params string[] arguments)
    {
        var start = new ProcessStartInfo(Program(name), arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        var libraries = Directory.GetDirectories(Path.Combine(Folder.Value, Libraries), "*-linux-gnu");
        start.Environment["LD_LIBRARY_PATH"] = string.Join(':', libraries);
        var process = Process.Start(start)!;
        // Read away, so that a full pipe never stops the server.
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    /// <summary>A folder of an unpacked package.</summary>
    public static string In(string path) => Path.Combine(Folder.Value, path);

    private static string Program(string name) => Path.Combine(Folder.Value, "usr", "sbin", name);

    private static string Unpack()
    {
        var folder = Repository.In(".artifacts", "irc-servers");
        if (File.Exists(Path.Combine(folder, "complete")))
            return folder;
        Directory.CreateDirectory(Path.Combine(folder, "archives", "partial"));
        string[] fetch =
        [
            "install", "--download-only", "--reinstall", "--no-install-recommends", "--yes", "-qq",
            "-o", $"Dir::Cache::archives={folder}/archives", "-o", "Debug::NoLocking=true", "ngircd", "inspircd",
        ];
        // The lists may be old or not there, and only root may renew them.
        if (!Run("apt-get", fetch) && !(Run("apt-get", "update", "-qq") && Run("apt-get", fetch)))
            throw NotThere("apt-get could not fetch them");
        foreach (var archive in Directory.GetFiles(Path.Combine(folder, "archives"), "*.deb"))
        {
            if (!Run("dpkg-deb", "-x", archive, folder))
                throw NotThere($"dpkg-deb could not unpack {Path.GetFileName(archive)}");
        }

        File.WriteAllText(Path.Combine(folder, "complete"), "");
        return folder;
    }

    private static InvalidOperationException NotThere(string why) => new(
        $"The chat's tests need the servers ngircd and inspircd, and {why}: on Debian run 'apt-get update' as root, then the tests again.");

    private static bool Run(string program, params string[] arguments)
    {
        if (!RuntimeInformation.IsOSPlatform(OSPlatform.Linux))
            throw NotThere("this is not Linux");
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw NotThere($"{program} did not start");
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
