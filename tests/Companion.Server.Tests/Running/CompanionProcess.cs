using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace Companion.Server.Tests.Running;

/// <summary>The built program as a process of its own, on a free port of this machine.</summary>
internal sealed class CompanionProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static readonly string Program =
        Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "companion.exe" : "companion");

    private readonly Process _process;

    private CompanionProcess(Process process, Uri address, string presenterKey) =>
        (_process, Address, PresenterKey) = (process, address, presenterKey);

    public Uri Address { get; }

    /// <summary>The presenter's key; an audience server has none.</summary>
    public string PresenterKey { get; }

    public int ProcessId => _process.Id;

    /// <summary>Starts the server on a data folder and waits until it has printed its links.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="inside">A command line that runs the one after it in some surroundings; none as a rule.</param>
    public static async Task<CompanionProcess> Serve(string folder, params string[] inside)
    {
        var process = Begin([.. inside, Program, "--port", "0", "--data", folder]);
        var link = await Prints(process, @"(?<address>http://[^/]+)/presenter#k=(?<key>\S+)");
        return new(process, new(link.Groups["address"].Value), link.Groups["key"].Value);
    }

    /// <summary>Starts an audience server and waits until it has printed where its page is.</summary>
    /// <param name="folder">Its data folder.</param>
    /// <param name="upstream">The Redis server.</param>
    public static async Task<CompanionProcess> Follow(string folder, string upstream)
    {
        var process = Begin([Program, "audience", "--upstream", upstream, "--port", "0", "--data", folder]);
        var place = await Prints(process, "page is at (?<address>http://[^/]+)/audience");
        return new(process, new(place.Groups["address"].Value), "");
    }

    /// <summary>Runs the program to its end.</summary>
    public static Task<(int ExitCode, string Output, string Error)> Run(string? input, params string[] words) => Pipe(Encoding.UTF8.GetBytes(input ?? ""), words);

    /// <summary>Runs the program to its end on what is no text.</summary>
    public static Task<(int ExitCode, string Output, string Error)> Pipe(byte[] input, params string[] words) => RunAll(input, [Program, .. words]);

    /// <summary>Runs the program to its end in some surroundings.</summary>
    public static Task<(int ExitCode, string Output, string Error)> RunInside(string[] inside, params string[] words) =>
        RunAll([], [.. inside, Program, .. words]);

    /// <summary>Runs the program until it says something on the error stream, then sends it a signal, and waits for its end.</summary>
    /// <param name="signal">The signal, as <c>kill</c> takes it.</param>
    /// <param name="words">The command line.</param>
    /// <returns>Its exit code, and all that it said on the error stream.</returns>
    public static async Task<(int ExitCode, string Said)> Interrupt(string signal, params string[] words)
    {
        using var process = Begin([Program, .. words]);
        var first = await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(Patience);
        await Shell.Run($"kill {signal} {process.Id}");
        var rest = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience);
        return (process.ExitCode, $"{first}\n{rest}");
    }

    /// <summary>Ends the process at once, as a crash or a power switch would (SIGKILL on Unix).</summary>
    public async Task Kill()
    {
        _process.Kill();
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience);
    }

    /// <summary>Waits until the process has ended by itself, and returns its exit code.</summary>
    public async Task<int> Ends()
    {
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience);
        return _process.ExitCode;
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
            await Kill();
        _process.Dispose();
    }

    private static async Task<Match> Prints(Process process, string wanted)
    {
        var printed = "";
        while (await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(Patience) is { } line)
        {
            printed += line + "\n";
            if (Regex.Match(line, wanted) is { Success: true } found)
                return found;
        }

        throw new InvalidOperationException($"The server did not start:\n{printed}{await process.StandardError.ReadToEndAsync()}");
    }

    private static async Task<(int ExitCode, string Output, string Error)> RunAll(byte[] input, string[] words)
    {
        using var process = Begin(words);
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        await process.StandardInput.BaseStream.WriteAsync(input);
        process.StandardInput.Close();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience);
        return (process.ExitCode, await output, await error);
    }

    private static Process Begin(string[] words) => Process.Start(new ProcessStartInfo(words[0], words[1..])
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        WorkingDirectory = Path.GetTempPath(),
    })!;
}
