using Companion.Engine;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Asks.Steps;

/// <summary>Keeps what was found on the last few boards, so that many who ask about one board cost no more than one.</summary>
/// <param name="ladder">The rules; those that assume one solution are left out.</param>
internal sealed class StepsCache(Ladder ladder)
{
    // What quick and slow viewers see, and a few boards that somebody asks "why" about.
    private const int Most = 8;

    private readonly Ladder _ladder = ladder.WithoutUniqueness();
    private readonly LinkedList<(Look Look, OpenSteps Steps)> _kept = new();

    // All that a search looks at.
    private sealed record Look(Grid Grid, CellSet Writing, ValueArray<Grounded> Used);

    /// <summary>What is open on a grid.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="writing">Cells whose lists are being written.</param>
    /// <param name="used">What was shown, spoken or used.</param>
    public OpenSteps On(Grid grid, CellSet writing, ValueArray<Grounded> used)
    {
        var look = new Look(grid, writing, used);
        for (var kept = _kept.First; kept is not null; kept = kept.Next)
        {
            if (kept.Value.Look != look)
                continue;
            _kept.Remove(kept);
            _kept.AddFirst(kept);
            return kept.Value.Steps;
        }

        var steps = OpenSteps.On(grid, writing, used, _ladder);
        _kept.AddFirst((look, steps));
        if (_kept.Count > Most)
            _kept.RemoveLast();
        return steps;
    }
}
