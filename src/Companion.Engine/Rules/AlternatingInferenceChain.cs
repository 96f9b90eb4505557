using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Alternating inference chain. Finds candidates in a row, linked by turns strongly (two candidates of a cell, two places of a
/// digit in a house) and weakly (in a cell, or a digit in cells that see each other), from a strong link to a strong link;
/// whatever neither end leaves room for goes, and where both ends are one candidate it is placed.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the first candidate is false the second is true, so that the third is false, and so on; then the last is
/// true. So one of the two ends is true.
/// </para>
/// <code>
/// 25 . . | . . . | . 5  .      r1c1 has 2 and 5, column 8 has two places for 5, row 4
/// .  . . | . . . | . .  .      has two places for 7. If r1c1 is not 2 it is 5, so that
/// .  . . | . . . | . .  .      r1c8 is not 5, r4c8 is 5 and not 7, and r4c1 is 7: in
/// -------+-------+-------      either case 2 goes from r4c1.
/// 27 . . | . . . | . 57 .
/// </code>
/// <para>
/// All of them: every candidate that goes by chains of single candidates, however long, but not by a single-digit chain, an
/// XY-chain or a loop that is as short. Each goes by one of its shortest chains, the shortest first, then by the first candidate
/// that goes; a chain counts only if something goes by it that does not by those before. A candidate whose shortest chains all
/// come to some candidate twice is left out: that one is true by a shorter chain. It rests on the absent candidates of the cells,
/// and on the digits' absence from the other open cells of the houses, that its strong links need.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class AlternatingInferenceChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("alternating-inference-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var chains = ChainFinder.For(board, ChainKind.Plain);
        Span<int> limits = stackalloc int[chains.Graph.Singles];
        LoopFinder.For(board).Depths.CopyTo(limits);
        var ofOneDigit = ChainFinder.For(board, ChainKind.OneDigit).Depths;
        var ofBivalueCells = ChainFinder.For(board, ChainKind.BivalueCells).Depths;
        for (var single = 0; single < limits.Length; single++)
            limits[single] = Math.Min(limits[single], Math.Min(ofOneDigit[single], ofBivalueCells[single]));
        chains.Find(Id, board, fewest: 1, limits, found);
    }
}
