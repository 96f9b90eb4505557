using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Cell forcing chain. Finds a cell with three or more candidates from each of which a chain leads to the same conclusion: the same
/// candidate goes, or the same digit is placed.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the cell holds one of its candidates. Along the chain from it, whatever cannot stand beside what is true is false,
/// and where one of two is false the other is true, up to the conclusion. So whichever it holds, the conclusion holds too.
/// </para>
/// <code>
/// -  . . | . 29  . | . 39 .      r5c5 has three candidates, and row 2 two places for 3.
/// .  . . | . 3   . | . 3  .      If r5c5 is 1, r5c1 is 9; if it is 2, r1c5 is 9; if it
/// .  . . | . .   . | . .  .      is 3, r2c5 is not, so r2c8 is 3 and r1c8 is 9. In any
/// -------+---------+-------      case 9 goes from -.
/// .  . . | . .   . | . .  .
/// 19 . . | . 123 . | . .  .
/// .  . . | . .   . | . .  .
/// </code>
/// <para>
/// All of them: every conclusion that follows from all candidates of a cell by chains of candidates, groups and almost locked sets
/// of at most five cells each, however long, but not by one chain with two ends or by a blossom of sets, and by fewer links than from
/// the places of any digit in a house, or as few. Each follows from one of the cells with the fewest links in all, the fewest first,
/// then by the candidate; what else the ends of the chains exclude goes with it. A digit is placed only if something goes by it that
/// does not go by a chain with two ends. It rests on the absent candidates of the cell, and on all that its chains' strong links need.
/// </para>
/// <para>
/// Cost: from each candidate, true and false, a walk over rows of bits, and a comparison with each cell and house; the two forcing
/// chains share them.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class CellForcingChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("cell-forcing-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Forcing.OfChains(board).Find(Id, board, fromHouses: false, found);
}
