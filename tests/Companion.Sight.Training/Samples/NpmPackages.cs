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
        using var npm = Process.Start(start) ?? throw new InvalidOperationException("npm could not be started.");
        var errors = npm.StandardError.ReadToEndAsync();
        npm.StandardOutput.ReadToEnd();
        npm.WaitForExit();
        if (npm.ExitCode != 0)
            throw new InvalidOperationException($"npm could not bring the packages of {list}: see to its registry. It said: {errors.Result}");
        File.WriteAllText(done, wanted);
    }
}
