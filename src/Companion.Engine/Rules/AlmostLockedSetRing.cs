using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Ring of two almost locked sets. Finds two almost locked sets with two digits in common of which each can stand in one of the
/// sets only; both digits go from the cells that see all their places in the sets, and every other digit of a set from the cells
/// that see all its places there.
/// </summary>
/// <remarks>
/// <para>
/// An almost locked set is some cells of a house that have one candidate more between them than there are cells. Without one of
/// its digits it holds all the others.
/// </para>
/// <para>
/// Why it holds: each set lacks one digit at most. One of them lacks the first link, so that it holds the second; then the other
/// lacks the second and holds the first. So each set lacks one of the links, both links stand in the sets, and each set holds all
/// its other digits.
/// </para>
/// <code>
/// 156 1- . | . 17 . | . . .        r1c1, r4c1 and r8c1 have four digits, r1c5 and r4c5
/// 5-  .  . | . 7- . | . . .        three; 1 and 2 can each be in one of the two sets
/// .   .  . | . .  . | . . .        only. So the one holds 1, 5 and 6 and the other 2
/// ---------+--------+------        and 7, or the one 2, 5 and 6 and the other 1 and 7:
/// 256 2- . | . 27 . | . . .        1 goes from row 1, 2 from row 4, 5 and 6 from
/// .   .  . | . .  . | . . .        column 1 and 7 from column 5.
/// .   .  . | . .  . | . . .
/// ---------+--------+------
/// .   .  . | . .  . | . . .
/// 56  .  . | . .  . | . . .
/// </code>
/// <para>
/// All of them: every candidate that goes by two sets of at most five cells each, no part of which is a naked subset, with two links.
/// The rings with the fewest cells come first, then by their links; a ring counts only if something goes by it that does not by those
/// before. Two sets in one house are a naked subset, which does not count. It rests on the absent candidates of the sets, and on where else in them the digits are not of which
/// something goes.
/// </para>
/// <para>Cost: a look at each pair of links between sets, a few microseconds once the graph is made.</para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class AlmostLockedSetRing : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("almost-locked-set-ring");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => SetRings.Find(Id, board, found);
}
