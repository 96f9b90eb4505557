using System.Numerics;

namespace Companion.Sight.Finding;

/// <summary>Finds long straight runs in an <see cref="EdgeMap"/>.</summary>
internal static class EdgeRuns
{
    /// <summary>Shorter runs are of no grid that can be read, in pixels.</summary>
    public const int Shortest = 200;

    // Some pictures have nothing but edges; the longest runs are enough there.
    private const int Most = 1200;

    /// <summary>The runs along rows.</summary>
    /// <param name="map">The edges.</param>
    public static List<EdgeRun> Horizontal(EdgeMap map)
    {
        var runs = new List<EdgeRun>();
        for (var y = 0; y < map.Height; y++)
        {
            var words = map.Down(y);
            if (Count(words) < Shortest / 2)
                continue;
            var tracker = default(RunTracker);
            for (var word = 0; word < words.Length; word++)
            {
                for (var bits = words[word]; bits != 0; bits &= bits - 1)
                {
                    if (tracker.Take(64 * word + BitOperations.TrailingZeroCount(bits), out var ended))
                        runs.Add(ended with { At = y + 1 });
                }
            }

            if (tracker.End(out var last))
                runs.Add(last with { At = y + 1 });
        }

        return Longest(runs);
    }

    /// <summary>The runs along columns.</summary>
    /// <param name="map">The edges.</param>
    public static List<EdgeRun> Vertical(EdgeMap map)
    {
        var runs = new List<EdgeRun>();
        var trackers = new RunTracker[map.Width];
        for (var y = 0; y < map.Height; y++)
        {
            var words = map.Across(y);
            for (var word = 0; word < words.Length; word++)
            {
                for (var bits = words[word]; bits != 0; bits &= bits - 1)
                {
                    var x = 64 * word + BitOperations.TrailingZeroCount(bits);
                    if (trackers[x].Take(y, out var ended))
                        runs.Add(ended with { At = x + 1 });
                }
            }
        }

        for (var x = 0; x < trackers.Length; x++)
        {
            if (trackers[x].End(out var last))
                runs.Add(last with { At = x + 1 });
        }

        return Longest(runs);
    }

    private static int Count(ReadOnlySpan<ulong> words)
    {
        var count = 0;
        foreach (var word in words)
            count += BitOperations.PopCount(word);
        return count;
    }

    private static List<EdgeRun> Longest(List<EdgeRun> runs)
    {
        if (runs.Count <= Most)
            return runs;
        runs.Sort((a, b) => b.Length.CompareTo(a.Length));
        return runs[..Most];
    }
}
