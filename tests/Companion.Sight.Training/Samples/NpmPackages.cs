using System.ComponentModel;
using System.Diagnostics;

namespace Companion.Sight.Samples;

/// <summary>Brings the packages of a list, which is a <c>package.json</c> with its lock, by npm.</summary>
internal static class NpmPackages
{
    /// <summary>Installs a list, unless just that is installed there already.</summary>
    /// <param name="list">The folder with <c>package.json</c> and <c>package-lock.json</c>.</param>
    /// <param name="target">Where to install it; made where it is not there.</param>
    /// <exception cref="InvalidOperationException">npm is not there or could not bring them.</exception>
    public static void Install(string list, string target)
    {
        var done = Path.Combine(target, "installed");
        var wanted = File.ReadAllText(Path.Combine(list, "package-lock.json"));
        if (File.Exists(done) && File.ReadAllText(done) == wanted)
            return;

        Directory.CreateDirectory(target);
        foreach (var name in new[] { "package.json", "package-lock.json" })
            File.Copy(Path.Combine(list, name), Path.Combine(target, name), overwrite: true);
        var start = new ProcessStartInfo(OperatingSystem.IsWindows() ? "npm.cmd" : "npm", ["ci", "--ignore-scripts", "--no-audit", "--no-fund"])
        {
            WorkingDirectory = target,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var npm = Start(start);
        var errors = npm.StandardError.ReadToEndAsync();
        npm.StandardOutput.ReadToEnd();
        npm.WaitForExit();
        if (npm.ExitCode != 0)
            throw new InvalidOperationException(
                $"npm could not bring the packages of {list}: see to the network and to npm's registry, and run this again. npm said: {errors.Result.Trim()}");
        File.WriteAllText(done, wanted);
    }

    private static Process Start(ProcessStartInfo npm)
    {
        const string Away = "The packages come by npm, which could not be started: install Node.js, or put npm on the path.";
        try
        {
            return Process.Start(npm) ?? throw new InvalidOperationException(Away);
        }
        catch (Win32Exception fault)
        {
            throw new InvalidOperationException(Away, fault);
        }
    }
}
