using System.Collections.Concurrent;
using Companion.Engine.Rules;
using Companion.Server.Live.Loop;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Tests.Live;

/// <summary>A worker that takes as long as the test wants, and is told when its work is wanted no longer.</summary>
internal sealed class HeldWorker<T>(IWorker<T> worker) : IWorker<T>, IDisposable
{
    private readonly ManualResetEventSlim _released = new();

    public ConcurrentQueue<long> Begun { get; } = new();

    public ConcurrentQueue<long> Cancelled { get; } = new();

    public IEnumerable<T> WorkOut(SessionState state, CancellationToken cancel)
    {
        Begun.Enqueue(state.Sequence);
        try
        {
            _released.Wait(cancel);
            // Who is released and cancelled at once may have heard of the release alone.
            cancel.ThrowIfCancellationRequested();
            return worker.WorkOut(state, cancel);
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

/// <summary>The workers that tests hold.</summary>
internal static class HeldWorker
{
    public static HeldWorker<ScanResult> OfScans() => new(new ScanWorker(Ladder.Standard));

    public static HeldWorker<Outlook> OfOutlooks() => new(new OutlookWorker(Ladder.Standard));
}
