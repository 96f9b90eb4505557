using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>
/// Has a worker work on the newest state, beside the session: the next state cancels the work on the one before and takes its place.
/// What was cancelled or failed is done again when the next state comes.
/// </summary>
/// <typeparam name="T">What the worker finds.</typeparam>
/// <param name="worker">The worker.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class LateWork<T>(IWorker<T> worker, ILogger<LateWork<T>> log)
{
    private readonly LatestState _states = new();

    /// <summary>Has this state worked on instead of the one before. Never waits.</summary>
    /// <param name="state">The state.</param>
    public void Start(SessionState state) => _states.Start(state);

    /// <summary>Stops: something more urgent is to be done. Never waits.</summary>
    public void Cancel() => _states.Cancel();

    /// <summary>Works until it is stopped.</summary>
    /// <param name="found">Told of each finding at once, in order.</param>
    /// <param name="stop">Stops it.</param>
    public Task Run(Func<T, ValueTask> found, CancellationToken stop) =>
        _states.Run((state, cancel) => Work(state, found, cancel), stop);

    private async Task Work(SessionState state, Func<T, ValueTask> found, CancellationToken cancel)
    {
        try
        {
            foreach (var finding in worker.WorkOut(state, cancel))
                await found(finding);
        }
        catch (OperationCanceledException)
        {
            // The next state takes its place.
        }
        catch (Exception failure)
        {
            WorkFailed(worker.GetType().Name, state.Sequence, failure);
        }
    }

    [LoggerMessage(LogLevel.Error, "{Worker} failed at state {Sequence}; the session goes on.")]
    private partial void WorkFailed(string worker, long sequence, Exception failure);
}
