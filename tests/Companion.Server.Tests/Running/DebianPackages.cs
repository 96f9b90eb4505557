using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Companion.Server.Tests.Running;

/// <summary>
/// Servers to test against: Debian's packages, fetched by apt and unpacked into a folder of the build output. Nothing is installed,
/// so no service of theirs starts and no user is made. Where that fails, so do the tests, with the way out; nothing is skipped.
/// </summary>
internal sealed class DebianPackages
{
    private const string Libraries = "usr/lib";

    private static readonly string[] Programs = ["usr/sbin", "usr/bin"];

    private readonly Lazy<string> _folder;
    private readonly string _name;
    private readonly string[] _packages;

    private DebianPackages(string name, params string[] packages) =>
        (_name, _packages, _folder) = (name, packages, new(Unpack));

    /// <summary>The IRC servers.</summary>
    public static DebianPackages Irc { get; } = new("irc-servers", "ngircd", "inspircd");

    /// <summary>Services for IRC servers, which keep accounts.</summary>
    public static DebianPackages IrcServices { get; } = new("irc-services", "atheme-services");

    /// <summary>The Redis server; its program lies in the tools' package.</summary>
    public static DebianPackages Redis { get; } = new("redis-server", "redis-server", "redis-tools");

    /// <summary>Poppler's readers of PDF files.</summary>
    public static DebianPackages Poppler { get; } = new("poppler", "poppler-utils");

    /// <summary>FFmpeg, whose <c>ffprobe</c> reads chapters.</summary>
    public static DebianPackages Ffmpeg { get; } = new("ffmpeg", "ffmpeg");

    /// <summary>Runs one of the programs to its end and returns what it printed.</summary>
    /// <exception cref="InvalidOperationException">It failed; the message is what it said.</exception>
    public string Run(string name, IEnumerable<string> arguments)
    {
        using var process = Process.Start(Program(name, [.. arguments]))!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException(error.Result);
    }

    /// <summary>Starts one of the programs as a child process of ours.</summary>
    public Process Start(string name, params string[] arguments)
    {
        var process = Process.Start(Program(name, arguments))!;
        ReadAway(process);
        return process;
    }

    /// <summary>A folder of an unpacked package.</summary>
    public string In(string path) => Path.Combine(_folder.Value, path);

    private ProcessStartInfo Program(string name, string[] arguments)
    {
        var program = Programs.Select(folder => Path.Combine(In(folder), name)).First(File.Exists);
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        // A package whose libraries are all installed brings none; some keep theirs a folder further down.
        if (Directory.Exists(In(Libraries)))
        {
            start.Environment["LD_LIBRARY_PATH"] = string.Join(
                ':', Directory.GetDirectories(In(Libraries), "*-linux-gnu").SelectMany(folder => Directory.GetDirectories(folder).Prepend(folder)));
        }

        return start;
    }

    private string Unpack()
    {
        var folder = Repository.In(".artifacts", _name);
        if (File.Exists(Path.Combine(folder, "complete")))
            return folder;
        Directory.CreateDirectory(Path.Combine(folder, "archives", "partial"));
        string[] fetch =
        [
            "install", "--download-only", "--reinstall", "--no-install-recommends", "--yes", "-qq",
            "-o", $"Dir::Cache::archives={folder}/archives", "-o", "Debug::NoLocking=true", .. _packages,
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

    private InvalidOperationException NotThere(string why) => new(
        $"These tests need Debian's {string.Join(" and ", _packages)}, and {why}: on Debian run 'apt-get update' as root, then the tests again.");

    private bool Run(string program, params string[] arguments)
    {
        if (!RuntimeInformation.IsOSPlatform(OSPlatform.Linux))
            throw NotThere("this is not Linux");
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw NotThere($"{program} did not start");
        ReadAway(process);
        process.WaitForExit();
        return process.ExitCode == 0;
    }

    // So that a full pipe never stops it.
    private static void ReadAway(Process process)
    {
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }
}
