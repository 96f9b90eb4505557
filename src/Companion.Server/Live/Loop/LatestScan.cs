using Companion.Engine.Rules;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Scans the newest state, one at a time: the next state cancels the scan before it and takes its place.</summary>
/// <param name="scanner">The scanner.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class LatestScan(IScanner scanner, ILogger<LatestScan> log)
{
    private readonly LatestState _states = new();
    private ScanResult? _previous;

    /// <summary>Has this state scanned instead of the one before. Never waits.</summary>
    /// <param name="state">The state.</param>
    public void Start(SessionState state) => _states.Start(state);

    /// <summary>Scans until it is stopped.</summary>
    /// <param name="found">Told of each part of a scan at once, in order.</param>
    /// <param name="stop">Stops it.</param>
    public Task Run(Func<ScanResult, ValueTask> found, CancellationToken stop) =>
        _states.Run((state, cancel) => Scan(state, found, cancel), stop);

    private async Task Scan(SessionState state, Func<ScanResult, ValueTask> found, CancellationToken cancel)
    {
        try
        {
            foreach (var part in scanner.Scan(state, _previous, cancel))
            {
                if (part.Reached >= Effort.Search)
                    _previous = part;
                await found(part);
            }
        }
        catch (OperationCanceledException)
        {
            // The next state takes its place.
        }
        catch (Exception failure)
        {
            ScanFailed(state.Sequence, failure);
        }
    }

    [LoggerMessage(LogLevel.Error, "The scan of state {Sequence} failed; the session goes on.")]
    private partial void ScanFailed(long sequence, Exception failure);
}
