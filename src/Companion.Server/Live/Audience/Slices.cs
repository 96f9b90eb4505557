namespace Companion.Server.Live.Audience;

/// <summary>
/// The viewers in slices. A view goes to one slice after the other, and in between whatever the presenter and the overlay wait for gets
/// its turn: thousands of sends at once would take both cores of a small machine for some hundredths of a second.
/// </summary>
internal sealed class Slices
{
    // 2,000 viewers are some 60 in a slice, which take about a thousandth of a second to send to.
    private const int Count = 32;

    private int _last;

    /// <summary>Their groups, in the order in which they are sent to.</summary>
    public IReadOnlyList<string> Names { get; } = [.. Enumerable.Range(0, Count).Select(slice => $"slice {slice}")];

    /// <summary>The slice of somebody who comes in: each in turn, so that all stay about as large.</summary>
    public string Next() => Names[(int)((uint)Interlocked.Increment(ref _last) % Count)];
}
