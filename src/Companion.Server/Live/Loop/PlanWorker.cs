using Companion.Engine.Planning.Talking;
using Companion.Engine.Rules;
using Companion.Server.Planning;
using Companion.Session.Planning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Live.Loop;

/// <summary>Plans the way on.</summary>
/// <param name="ladder">The whole ladder.</param>
/// <param name="voice">The words.</param>
/// <param name="rarity">How often remarks are true.</param>
internal sealed class PlanWorker(Ladder ladder, Voice voice, Rarity rarity) : IWorker<PlannedWay>
{
    /// <inheritdoc/>
    public IEnumerable<PlannedWay> WorkOut(SessionState state, CancellationToken cancel)
    {
        var way = WayAhead.Of(state, ladder, cancel);
        yield return new(way, way.Plan is { } plan ? RunSheet.Of(plan, voice.Wording, voice.Rate, rarity) : null, state.Entries);
    }
}
