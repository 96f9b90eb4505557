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
    /// <param name="words">The hub, how many viewers read promptly, slowly and never. The key comes as the first line of the input.</param>
    public static async Task RunAsync(string[] words)
    {
        var hub = new Uri(words[0]);
        var counts = words[1..].Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToArray();
        var key = Console.ReadLine()!;
        var arrivals = new ConcurrentBag<(long Sequence, long At)>();
        var readings = Enum.GetValues<Reading>().SelectMany(reading => Enumerable.Repeat(reading, counts[(int)reading]));
        var viewers = readings
            .Select(reading => new RawViewer(
                reading, (sequence, at) => _ = reading == Reading.Prompt ? Note(arrivals, sequence, at) : 0))
            .ToList();
        foreach (var some in viewers.Chunk(AtOnce))
            await Task.WhenAll(some.Select(viewer => viewer.Connect(hub, key)));
        Console.WriteLine("ready");
        Console.ReadLine();
        foreach (var (sequence, at) in arrivals.ToArray())
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{sequence} {at}"));
        Console.WriteLine("end");
    }

    private static int Note(ConcurrentBag<(long Sequence, long At)> arrivals, long sequence, long at)
    {
        arrivals.Add((sequence, at));
        return 0;
    }
}
