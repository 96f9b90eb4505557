using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// XY-chain. Finds four or more cells with two candidates each, of which each sees the next and shares a digit with it, by turns
/// the one and the other of its two; the digit with which the first begins and the last ends goes from the cells that see both.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the first cell is not its beginning digit it is its other one, so that the next cell is its other one, and so
/// on; then the last is its ending digit. So one of the two ends holds the digit.
/// </para>
/// <code>
/// 12 .  .  | .  23 .  | . . .      If r1c1 is not 1 it is 2, then r1c5 is 3, r4c5 is 4
/// .  -  .  | .  .  .  | . . .      and r4c2 is 1: 1 goes from -, which see both r1c1
/// .  -  .  | .  .  .  | . . .      and r4c2.
/// ---------+----------+------
/// -  14 .  | .  34 .  | . . .
/// </code>
/// <para>
/// All of them: every candidate that goes by chains of such cells, however long, but not by one of fewer than four, which are
/// left to easier rules, nor by a continuous loop that is as short. Each goes by one of its shortest chains, the shortest first,
/// then by the first candidate that goes; a chain counts only if something goes by it that does not by those before. A candidate
/// whose shortest chains all come to some candidate twice is left out: that one is true by a shorter chain. It rests on the
/// absent candidates of the cells.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class XYChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("xy-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) =>
        ChainFinder.For(board, ChainKind.BivalueCells).Find(Id, board, fewest: 4, limits: LoopFinder.For(board).Depths, found);
}
