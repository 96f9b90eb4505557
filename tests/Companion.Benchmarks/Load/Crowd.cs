using System.Diagnostics;
using System.Globalization;

namespace Companion.Benchmarks.Load;

/// <summary>Viewers in a process of their own.</summary>
/// <param name="Prompt">How many read at once.</param>
/// <param name="Slow">How many read a few bytes a second.</param>
/// <param name="Never">How many never read.</param>
internal readonly record struct CrowdSize(int Prompt, int Slow = 0, int Never = 0)
{
    public int All => Prompt + Slow + Never;
}

/// <summary>A crowd that is connected and notes what it gets.</summary>
internal sealed class Crowd : IAsyncDisposable
{
    private readonly Process _process;

    private Crowd(Process process, CrowdSize size) => (_process, Size) = (process, size);

    public CrowdSize Size { get; }

    /// <summary>Connects a crowd.</summary>
    /// <param name="servers">Where: each viewer at the next of them.</param>
    /// <param name="key">What lets them in.</param>
    /// <param name="size">How many.</param>
    public static async Task<Crowd> ConnectAsync(IEnumerable<Uri> servers, string key, CrowdSize size)
    {
        var process = Process.Start(new ProcessStartInfo(
            "dotnet", [typeof(Crowd).Assembly.Location, "crowd", string.Join(',', servers), $"{size.Prompt}", $"{size.Slow}", $"{size.Never}"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
        await process.StandardInput.WriteLineAsync(key);
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line == "ready")
                return new(process, size);
        }

        throw new InvalidOperationException("The crowd could not connect.");
    }

    /// <summary>Every arrival of a view at a viewer who reads promptly: the view's number and the time by the machine's clock.</summary>
    public async Task<List<(long Sequence, long At)>> ArrivalsAsync()
    {
        await _process.StandardInput.WriteLineAsync();
        List<(long, long)> arrivals = [];
        while (await _process.StandardOutput.ReadLineAsync() is { } line && line != "end")
        {
            var words = line.Split(' ');
            arrivals.Add((long.Parse(words[0], CultureInfo.InvariantCulture), long.Parse(words[1], CultureInfo.InvariantCulture)));
        }

        return arrivals;
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
    }
}
