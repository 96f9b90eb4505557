using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Pair of almost locked sets. Finds two almost locked sets with two digits in common, of which one, the link, can stand in one of
/// the sets only, since all its places in the one see all its places in the other; the other digit goes from the cells that see
/// all its places in both.
/// </summary>
/// <remarks>
/// <para>
/// An almost locked set is some cells of a house that have one candidate more between them than there are cells. Without one of
/// its digits it holds all the others.
/// </para>
/// <para>
/// Why it holds: the link is missing from one of the sets, and that set holds all its other digits. So one of the sets holds the
/// other common digit, and what sees all its places in both does not.
/// </para>
/// <code>
/// 123 23 . | . .  . | . . -        r1c1, r1c2 have three digits, r5c1, r5c5 and r5c9
/// .   .  . | . .  . | . . .        have four; 1 can be in one of the two sets only.
/// .   .  . | . .  . | . . .        If it is not in the first, that holds 2 and 3; if
/// ---------+--------+--------      it is not in the second, that holds 3, 4 and 5.
/// .   .  . | . .  . | . . .        In either case 3 goes from -.
/// 14  .  . | . 45 . | . . 345
/// </code>
/// <para>
/// All of them: every candidate that goes by two sets of at most five cells each, no part of which is a naked subset, but not by one
/// alone. Each goes by one of its pairs with the fewest cells, the fewest first, then by the first candidate that goes; a pair counts
/// only if something goes by it that does not by those before. Easier rules have what goes by as few cells: wings (three cells, or
/// four with four digits of which one sees the others), <see cref="XYChain"/>, subsets of one house and, where the other digit links
/// the sets too, <see cref="AlmostLockedSetRing"/>. It rests on the absent candidates of the sets, and on where else in
/// them the linking digit and the other one are not.
/// </para>
/// <para>
/// Cost: for each candidate a walk over rows of bits, and where it goes by two sets a search for the fewest cells. A seventh of a
/// millisecond with the graph of sets, which the other rules about them use again.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class AlmostLockedSetPair : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("almost-locked-set-pair");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => SetChains.For(board).Find(
        Id,
        board,
        sets: 2,
        static (board, graph, ends, cells) => graph.Weak(ends.First).Has(ends.Last) || IsWing(cells, board),
        found);

    // Four cells with four digits, one of which sees the others: WXYZ-wing.
    private static bool IsWing(CellSet cells, Board board)
    {
        if (cells.Count != 4)
            return false;
        var (digits, hasPivot) = (DigitSet.Empty, false);
        foreach (var cell in cells)
        {
            digits |= board[cell];
            hasPivot |= cell.Peers.ContainsAll(cells.Without(cell));
        }

        return hasPivot && digits.Count == 4;
    }
}
