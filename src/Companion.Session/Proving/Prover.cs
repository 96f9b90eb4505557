using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Proving;

/// <summary>Proves with the rules that a session looks with; last resorts are left out.</summary>
/// <param name="ladder">The whole ladder.</param>
public sealed class Prover(Ladder ladder)
{
    /// <summary>The easiest proof of a claim.</summary>
    /// <param name="state">The state.</param>
    /// <param name="claim">The claim, which must be provable.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Attribution Prove(SessionState state, Claim claim, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(claim);
        return Attribution.Of(claim.Before!, claim.Target, Cut(state), cancel: cancel);
    }

    /// <summary>The answer to why a digit is, or cannot be, in a cell.</summary>
    /// <param name="state">The state.</param>
    /// <param name="asked">The digit and the cell.</param>
    /// <param name="voice">The words.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Views.WhyView Answer(SessionState state, Candidate asked, Views.Voice voice, CancellationToken cancel)
    {
        var rules = Cut(state);
        return CellQuestion.Answer(state, asked, (board, target) => Attribution.Of(board, target, rules, cancel: cancel), voice);
    }

    // A loaded puzzle has one solution: others are refused.
    private Ladder Cut(SessionState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.LadderCut.Of(ladder, hasOneSolution: state.Grid.Puzzle is not null);
    }
}
