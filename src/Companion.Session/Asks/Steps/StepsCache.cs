using Companion.Engine;
using Companion.Engine.Rules;
using Companion.Session.Ladders;
using Companion.Session.State;

namespace Companion.Session.Asks.Steps;

/// <summary>Keeps what was found on the last few boards, so that many who ask about one board cost no more than one.</summary>
/// <param name="ladder">All rules. The presenter's cut is taken of them, without those that assume one solution.</param>
internal sealed class StepsCache(Ladder ladder)
{
    // What quick and slow viewers see, and a few boards that somebody asks "why" about.
    private const int Most = 8;

    private readonly LinkedList<(Look Look, OpenSteps Steps)> _kept = new();

    // All that a search looks at.
    private sealed record Look(Grid Grid, CellSet Writing, ValueArray<Grounded> Used, LadderCut Cut);

    /// <summary>What is open on the board that viewers see.</summary>
    /// <param name="seen">What they see.</param>
    public OpenSteps On(SessionState seen) => On(new Look(seen.Grid, seen.Writing, seen.Used, seen.LadderCut));

    /// <summary>What was open on the board before an entry.</summary>
    /// <param name="seen">What viewers see.</param>
    /// <param name="entry">The entry.</param>
    public OpenSteps Before(SessionState seen, Step entry) =>
        On(new Look(entry.Grid, entry.Writing, seen.Used, seen.LadderCut));

    private OpenSteps On(Look look)
    {
        for (var kept = _kept.First; kept is not null; kept = kept.Next)
        {
            if (kept.Value.Look != look)
                continue;
            _kept.Remove(kept);
            _kept.AddFirst(kept);
            return kept.Value.Steps;
        }

        var rules = look.Cut.Of(ladder, hasOneSolution: false).WithoutLastResorts();
        var steps = OpenSteps.On(look.Grid, look.Writing, look.Used, rules);
        _kept.AddFirst((look, steps));
        if (_kept.Count > Most)
            _kept.RemoveLast();
        return steps;
    }
}
