namespace Companion.Engine.Proofs;

/// <summary>Grade 4: the whole deduction, why it holds and what follows. Nothing beyond this deduction.</summary>
public sealed class WhyHint : Hint
{
    internal WhyHint(Deduction deduction, Saying words)
        : base(words) => Deduction = deduction;

    /// <inheritdoc/>
    public override Grade Grade => Grade.Why;

    /// <summary>The deduction.</summary>
    public Deduction Deduction { get; }
}
