using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Chain with almost locked sets. Finds grouped chains in which a strong link may also be two digits of an almost locked set: where
/// one of them is not in the set, the other is. Whatever neither end leaves room for goes.
/// </summary>
/// <remarks>
/// <para>
/// An almost locked set is some cells of a house that have one candidate more between them than there are cells. Without one of
/// its digits it holds all the others.
/// </para>
/// <para>
/// Why it holds: as with grouped chains, a false node makes the next one true and a true one the next one false, up to the last; a
/// digit of a set counts as true if one of the cells of the set holds it. So one of the two ends is true.
/// </para>
/// <code>
/// 5 . .  | . . . | .  5   .        Row 1 has two places for 5. If r1c1 is not 5, r1c8 is,
/// . . -  | . . . | .  .   .        so that r4c8 is not 5 and the set r4c8, r5c7, r6c8
/// . . -  | . . . | .  .   .        holds 6, 7 and 9. Then r5c7 is 9 and r5c3 is 5: in
/// -------+-------+-----------      either case 5 goes from -.
/// - . .  | . . . | .  567 .
/// - . 59 | . . . | 79 .   .
/// - . .  | . . . | .  67  .
/// </code>
/// <para>
/// All of them: every candidate that goes by chains of candidates, groups and sets of at most five cells each, no part of which is a
/// naked subset, however long, with fewer strong links than by grouped chains and by two or three sets alone. Each goes by one of its
/// shortest chains, the shortest first, then by the first candidate that goes; a chain counts only if something goes by it that does
/// not by those before. Where its ends cannot both be true it is a loop: whatever neither end of some weak link leaves room for goes,
/// and the other digits of its sets from the cells that see all their places there. A candidate whose shortest chains all come to some
/// node twice is left out. It rests on the absent candidates of the cells and sets, and on the digits' absence from the other open
/// cells of the houses, that its strong links need.
/// </para>
/// <para>Cost: a walk over rows of bits from each candidate that goes, a sixth of a millisecond with the graph.</para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class AlmostLockedSetChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("almost-locked-set-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var chains = ChainFinder.For(board, ChainKind.WithSets);
        Span<int> limits = stackalloc int[chains.Graph.Singles];
        ChainFinder.For(board, ChainKind.Grouped).Depths.CopyTo(limits);
        var ofSets = ChainFinder.For(board, ChainKind.SetsOnly).Depths;
        for (var single = 0; single < limits.Length; single++)
            limits[single] = Math.Min(limits[single], ofSets[single]);
        chains.Find(Id, board, fewest: 2, limits, found);
    }
}
