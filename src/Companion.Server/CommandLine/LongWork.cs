using System.CommandLine;
using System.Globalization;

namespace Companion.Server.CommandLine;

/// <summary>
/// Says on the error stream that work is still going on, so that nobody takes it for a program that hangs: after a second, then every
/// five. Short work says nothing.
/// </summary>
internal sealed class LongWork : IDisposable
{
    private static readonly TimeSpan First = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Then = TimeSpan.FromSeconds(5);

    private readonly Lock _telling = new();
    private readonly ITimer _timer;
    private bool _isOver;

    private LongWork(TimeProvider time, Action<TimeSpan> tell)
    {
        var began = time.GetTimestamp();
        _timer = time.CreateTimer(_ => Tell(() => tell(time.GetElapsedTime(began))), null, First, Then);
    }

    /// <summary>Begins; the work is over when what is returned is disposed.</summary>
    /// <param name="streams">What the command is run with.</param>
    /// <param name="what">What is being done, as in "Planning the route".</param>
    /// <param name="soFar">How far it has come, asked for from another thread; null where that cannot be told.</param>
    public static LongWork Begin(InvocationConfiguration streams, string what, Func<string>? soFar = null)
    {
        var time = (streams as CommandStreams)?.Time ?? TimeProvider.System;
        return new(time, elapsed => streams.Error.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{what}: {(soFar is null ? "" : soFar() + ", ")}{elapsed.TotalSeconds:F0} s. Ctrl+C stops it.")));
    }

    /// <summary>Ends it: nothing is said any more.</summary>
    public void Dispose()
    {
        lock (_telling)
            _isOver = true;
        _timer.Dispose();
    }

    private void Tell(Action tell)
    {
        lock (_telling)
        {
            if (!_isOver)
                tell();
        }
    }
}
