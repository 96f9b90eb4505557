using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Trio of almost locked sets. Finds three almost locked sets of which the middle one has a digit in common with each of the
/// others that can stand in one of the two only, two different digits; a digit of both outer sets goes from the cells that see all
/// its places in them.
/// </summary>
/// <remarks>
/// <para>
/// An almost locked set is some cells of a house that have one candidate more between them than there are cells; a cell with two
/// candidates is the smallest. Without one of its digits it holds all the others.
/// </para>
/// <para>
/// Why it holds: if the first set lacks the digit, it holds its link with the middle set, which then lacks that and holds its link
/// with the last set, which lacks that and holds the digit. So one of the outer sets holds it.
/// </para>
/// <code>
/// 125 25 . | .   .  -  | . . .     If 5 is not in r1c1 or r1c2, 1 is in r1c1, so that
/// .   .  . | .   .  .  | . . .     r5c1, r5c4 and r5c5 hold 3, 4 and 6. Then 4 is in
/// .   .  . | .   .  .  | . . .     block 5, and r6c6 is 5. In either case 5 goes
/// ---------+-----------+------     from -.
/// .   .  . | .   .  .  | . . .
/// 136 .  . | 346 46 .  | . . .
/// .   .  . | .   .  45 | . . .
/// </code>
/// <para>
/// All of them: every candidate that goes by three sets of at most five cells each, no part of which is a naked subset, but not by
/// fewer. Each goes by one of its chains with the fewest cells, the fewest first, then by the first candidate that goes; a chain
/// counts only if something goes by it that does not by those before. Where its ends cannot both hold the digit it is a ring of three
/// sets, and whatever neither side of a link leaves room for goes. A candidate that goes by an XY-chain of as few cells is left to
/// <see cref="XYChain"/>, and one whose chains come to some node twice is left out. It rests on the absent candidates of the sets,
/// and on where else in them the linking digits are not.
/// </para>
/// <para>Cost: as that of <see cref="AlmostLockedSetPair"/>, with one more step.</para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class AlmostLockedSetTriple : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("almost-locked-set-triple");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) =>
        SetChains.For(board).Find(Id, board, sets: 3, static (_, _, _, _) => false, found);
}
