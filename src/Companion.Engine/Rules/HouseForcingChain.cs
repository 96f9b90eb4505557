using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// House forcing chain. Finds a digit with three or more places in a house from each of which a chain leads to the same conclusion:
/// the same candidate goes, or the same digit is placed.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the digit stands in one of its places. Along the chain from there, whatever cannot stand beside what is true is
/// false, and where one of two is false the other is true, up to the conclusion. So wherever it stands, the conclusion holds.
/// </para>
/// <code>
/// 5  . . | . 5  .  | . . 5      Row 1 has three places for 5, and row 8 two. If r1c1 is
/// .  . . | . .  .  | . . .      5, r4c1 is 9; if r1c5 is 5, r6c5 is 9; if r1c9 is 5,
/// .  . . | . .  .  | . . .      r8c9 is not, so r8c6 is 5 and r7c6 is 9. In any case 9
/// -------+---------+------      goes from -.
/// 59 . . | . .  -  | . . .
/// .  . . | . .  .  | . . .
/// .  . . | . 59 .  | . . .
/// -------+---------+------
/// .  . . | . .  59 | . . .
/// .  . . | . .  5  | . . 5
/// </code>
/// <para>
/// All of them: every conclusion that follows from all places of a digit in a house by chains of candidates, groups and almost locked
/// sets of at most five cells each, however long, but not by one chain with two ends or by a blossom of sets, and by fewer links than
/// from the candidates of any cell. Each follows from one of the houses with the fewest links in all, the fewest first, then by the
/// candidate; what else the ends of the chains exclude goes with it. A digit is placed only if something goes by it that does not go
/// by a chain with two ends. It rests on the digit's absence from the other open cells of the house, and on all that its chains'
/// strong links need.
/// </para>
/// <para>
/// Cost: from each candidate, true and false, a walk over rows of bits, and a comparison with each cell and house; the two forcing
/// chains share them.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class HouseForcingChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("house-forcing-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Forcing.OfChains(board).Find(Id, board, fromHouses: true, found);
}
