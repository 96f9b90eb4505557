namespace Companion.Engine.Proofs;

/// <summary>Grade 4: the whole deduction, why it holds and what follows. Nothing beyond this deduction.</summary>
public sealed class WhyHint : Hint
{
    internal WhyHint(Deduction deduction, CandidateSet candidates, Saying words)
        : base(words) => (Deduction, Candidates) = (deduction, candidates);

    /// <inheritdoc/>
    public override Grade Grade => Grade.Why;

    /// <summary>The deduction.</summary>
    public Deduction Deduction { get; }

    /// <summary>The digits of the pattern where they stand as candidates in its cells.</summary>
    public CandidateSet Candidates { get; }
}
