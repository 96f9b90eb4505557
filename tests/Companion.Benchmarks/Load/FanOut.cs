using System.Diagnostics;

namespace Companion.Benchmarks.Load;

/// <summary>How long views took from the first viewer who had them to the others.</summary>
/// <param name="Views">How many views.</param>
/// <param name="Times">The time of each arrival after the view's first, in milliseconds, in ascending order.</param>
internal sealed record FanOut(int Views, double[] Times)
{
    /// <summary>Sums arrivals up.</summary>
    /// <param name="arrivals">View and time of each.</param>
    /// <param name="viewers">How many viewers there are that read promptly.</param>
    /// <exception cref="InvalidOperationException">A viewer missed a view.</exception>
    public static FanOut Of(IReadOnlyCollection<(long Sequence, long At)> arrivals, int viewers)
    {
        // Views that went out while the viewers connected came to some of them only, and each is greeted with the one before.
        var pushed = arrivals.GroupBy(arrival => arrival.Sequence).OrderBy(view => view.Key).SkipWhile(view => view.Count() < viewers).Skip(1).ToList();
        if (pushed.Any(view => view.Count() != viewers))
            throw new InvalidOperationException("A viewer who reads missed a view: " + string.Join(' ', pushed.Select(view => view.Count())));
        var times = new List<double>();
        foreach (var view in pushed)
        {
            var first = view.Min(arrival => arrival.At);
            times.AddRange(view.Select(arrival => Stopwatch.GetElapsedTime(first, arrival.At).TotalMilliseconds));
        }

        return new(pushed.Count, [.. times.Order()]);
    }
}
