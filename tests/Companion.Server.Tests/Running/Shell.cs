using System.Diagnostics;

namespace Companion.Server.Tests.Running;

/// <summary>Runs a script as a person would who copies it out of the README.</summary>
internal static class Shell
{
    public static async Task<string> Run(string script, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("/bin/sh", ["-c", script]) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return process.ExitCode == 0 ? output : throw new InvalidOperationException(await error);
    }
}
