namespace Companion.Engine.Proofs;

/// <summary>Grade 1: a part of the grid to look at. No digit, no rule, no cell.</summary>
public sealed class WhereHint : Hint
{
    internal WhereHint(Region region, Saying words)
        : base(words) => Region = region;

    /// <inheritdoc/>
    public override Grade Grade => Grade.Where;

    /// <summary>The house or chute to look at.</summary>
    public Region Region { get; }
}
