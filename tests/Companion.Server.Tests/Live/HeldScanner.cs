using System.Collections.Concurrent;
using Companion.Engine.Rules;
using Companion.Server.Live.Loop;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Tests.Live;

/// <summary>A scanner that takes as long as the test wants, and is told when its scan is wanted no longer.</summary>
internal sealed class HeldScanner : IScanner, IDisposable
{
    private readonly ManualResetEventSlim _released = new();

    public ConcurrentQueue<long> Begun { get; } = new();

    public ConcurrentQueue<long> Cancelled { get; } = new();

    public IEnumerable<ScanResult> Scan(SessionState state, ScanResult? previous, CancellationToken cancel)
    {
        Begun.Enqueue(state.Sequence);
        try
        {
            _released.Wait(cancel);
            // Who is released and cancelled at once may have heard of the release alone.
            cancel.ThrowIfCancellationRequested();
            return new LadderScanner(Ladder.Standard).Scan(state, previous, cancel);
        }
        catch (OperationCanceledException)
        {
            Cancelled.Enqueue(state.Sequence);
            throw;
        }
    }

    public void Release() => _released.Set();

    public void Dispose() => _released.Dispose();
}
