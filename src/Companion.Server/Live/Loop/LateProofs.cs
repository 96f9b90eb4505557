using Companion.Session.Commands;
using Companion.Session.Proving;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>
/// Proves the entries that are not attributed yet, the oldest first, while nothing else is to be done: the next entry cancels it,
/// and what was left over is looked at again when its scan is finished.
/// </summary>
/// <param name="prover">The prover.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class LateProofs(Prover prover, ILogger<LateProofs> log)
{
    private readonly LatestState _states = new();

    /// <summary>Has the entries of this state proved. Never waits.</summary>
    /// <param name="state">The state.</param>
    public void Start(SessionState state) => _states.Start(state);

    /// <summary>Stops: something more urgent is to be done. Never waits.</summary>
    public void Cancel() => _states.Cancel();

    /// <summary>Proves until it is stopped.</summary>
    /// <param name="found">Told of each attribution at once.</param>
    /// <param name="stop">Stops it.</param>
    public Task Run(Func<AttributeEntry, ValueTask> found, CancellationToken stop) =>
        _states.Run((state, cancel) => Prove(state, found, cancel), stop);

    private async Task Prove(SessionState state, Func<AttributeEntry, ValueTask> found, CancellationToken cancel)
    {
        try
        {
            foreach (var claim in Due.Of(state))
                await found(new(claim.Step.Number, prover.Prove(state, claim, cancel)));
        }
        catch (OperationCanceledException)
        {
            // It goes on after the next scan.
        }
        catch (Exception failure)
        {
            ProofFailed(state.Sequence, failure);
        }
    }

    [LoggerMessage(LogLevel.Error, "An entry of state {Sequence} could not be attributed; the session goes on.")]
    private partial void ProofFailed(long sequence, Exception failure);
}
