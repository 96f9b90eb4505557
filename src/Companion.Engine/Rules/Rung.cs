using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>One place on a ladder.</summary>
/// <param name="Rule">The rule that stands there.</param>
/// <param name="Place">
/// How many rungs of the whole ladder are easier: 0 for the easiest. A rung keeps its place when others are left out, so that rungs
/// of ladders which were cut from one can be compared.
/// </param>
/// <param name="Cost">
/// What one deduction of the rule costs whoever follows it, 1 to <see cref="Dearest"/>; the cost of a proof is the sum over its
/// deductions.
/// </param>
/// <param name="Family">The family that the rule belongs to; empty where the ladder has no families.</param>
public sealed record Rung(IRule Rule, int Place, int Cost, string Family)
{
    /// <summary>The highest cost.</summary>
    public const int Dearest = 1000;

    /// <summary>What the presenter calls the rule instead of what the phrases call it; null where they may.</summary>
    public RuleName? Called { get; init; }

    /// <summary>Whether the rule finds anything on a board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="cancel">Stops a rule that takes long.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public bool IsOpenOn(Board board, CancellationToken cancel = default)
    {
        var found = new Findings(limit: 1, cancel);
        Rule.Find(board, found);
        cancel.ThrowIfCancellationRequested();
        return found.Count > 0;
    }
}
