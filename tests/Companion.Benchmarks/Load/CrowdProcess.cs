using System.Collections.Concurrent;
using System.Globalization;

namespace Companion.Benchmarks.Load;

/// <summary>
/// What the process of a crowd does: connects its viewers, notes when each view arrives, and says so when it is asked to. Its clock
/// is the machine's, the same as that of the process that started it.
/// </summary>
internal static class CrowdProcess
{
    private const int AtOnce = 50;

    /// <summary>Runs until its input ends.</summary>
    /// <param name="words">The servers, how many viewers read promptly, slowly and never. The key comes as the first line of the input.</param>
    /// <param name="input">A second line asks for what was noted.</param>
    /// <param name="output">Where it goes.</param>
    public static async Task RunAsync(string[] words, TextReader input, TextWriter output)
    {
        var hubs = words[0].Split(',').Select(server => new Uri(new(server), "/hubs/audience")).ToArray();
        var counts = words[1..].Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToArray();
        var key = (await input.ReadLineAsync())!;
        var arrivals = new ConcurrentBag<(long Sequence, long At)>();
        var readings = Enum.GetValues<Reading>().SelectMany(reading => Enumerable.Repeat(reading, counts[(int)reading]));
        var viewers = readings
            .Select(reading => new RawViewer(reading, (sequence, at) =>
            {
                if (reading == Reading.Prompt)
                    arrivals.Add((sequence, at));
            }))
            .ToList();
        var connected = 0;
        foreach (var some in viewers.Chunk(AtOnce))
            await Task.WhenAll(some.Select(viewer => viewer.Connect(hubs[connected++ % hubs.Length], key)));
        await output.WriteLineAsync("ready");
        await input.ReadLineAsync();
        foreach (var (sequence, at) in arrivals.ToArray())
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{sequence} {at}"));
        await output.WriteLineAsync("end");
    }
}
