using Companion.Engine.Planning.Talking;
using Companion.Engine.Rules;
using Companion.Server.Planning;
using Companion.Session.Planning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Live.Loop;

/// <summary>Plans the way on from the newest state, beside the session: the next entry cancels it.</summary>
/// <param name="ladder">The whole ladder.</param>
/// <param name="voice">The words.</param>
/// <param name="rarity">How often remarks are true.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class LatePlans(Ladder ladder, Voice voice, Rarity rarity, ILogger<LatePlans> log)
{
    private readonly LatestState _states = new();

    /// <summary>Has the way on from this state planned. Never waits.</summary>
    /// <param name="state">The state.</param>
    public void Start(SessionState state) => _states.Start(state);

    /// <summary>Stops: something more urgent is to be done. Never waits.</summary>
    public void Cancel() => _states.Cancel();

    /// <summary>Plans until it is stopped.</summary>
    /// <param name="found">Told of each plan.</param>
    /// <param name="stop">Stops it.</param>
    public Task Run(Func<PlannedWay, ValueTask> found, CancellationToken stop) =>
        _states.Run((state, cancel) => Plan(state, found, cancel), stop);

    private async Task Plan(SessionState state, Func<PlannedWay, ValueTask> found, CancellationToken cancel)
    {
        try
        {
            var way = WayAhead.Of(state, ladder, cancel);
            await found(new(way, way.Plan is { } plan ? RunSheet.Of(plan, voice.Wording, voice.Rate, rarity) : null));
        }
        catch (OperationCanceledException)
        {
            // It is planned anew after the next scan.
        }
        catch (Exception failure)
        {
            PlanFailed(state.Sequence, failure);
        }
    }

    [LoggerMessage(LogLevel.Error, "The way on from state {Sequence} could not be planned; the session goes on.")]
    private partial void PlanFailed(long sequence, Exception failure);
}
