using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// WXYZ-wing. Finds four cells with four digits between them, of which one, the pivot, sees the other three, the pincers, and in
/// which all places of each digit see each other but those of one digit z; z goes from the cells that see all its places in the
/// four.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each of the other three digits fills at most one of the four cells. So one of them is z.
/// </para>
/// <code>
/// wz   .  -    | .  .  .  | .  .  .
/// .    xz .    | .  .  .  | .  .  .      Pivot r3c3, pincers r1c1, r2c2 and r3c8:
/// -    -  wxyz | .  .  .  | .  yz .      z goes from -, which see all four.
/// </code>
/// <para>
/// All of them: one for each set of cells, by the first pivot, then by the other cells; every cell that sees the other three is a
/// pivot. The cells have two to four candidates, and no two or three of them have as few digits: these are naked subsets and
/// smaller wings. It rests on the absent candidates of the four cells, but not on those with which all this would still be so.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class WXYZWing : IRule
{
    private const int Size = 4;

    /// <inheritdoc/>
    public RuleId Id { get; } = new("wxyz-wing");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var few = board.CellsWith(2) | board.CellsWith(3) | board.CellsWith(4);
        foreach (var pivot in few)
        {
            if (!Extend(CellSet.Of(pivot), board[pivot], few & pivot.Peers, pivot, board, found))
                return;
        }
    }

    private bool Extend(CellSet chosen, DigitSet digits, CellSet rest, Cell pivot, Board board, Findings found)
    {
        if (chosen.Count == Size)
            return Judge(chosen, digits, pivot, board, found);
        foreach (var next in rest)
        {
            rest = rest.Without(next);
            var (wider, union) = (chosen.With(next), digits | board[next]);
            if (union.Count <= Size && union.Count >= Math.Min(wider.Count + 1, Size)
                && !Extend(wider, union, rest, pivot, board, found))
                return false;
        }

        return true;
    }

    private bool Judge(CellSet cells, DigitSet digits, Cell pivot, Board board, Findings found)
    {
        var pivots = CellSet.Empty;
        foreach (var cell in cells)
        {
            if (cell.Peers.ContainsAll(cells.Without(cell)))
                pivots = pivots.With(cell);
        }

        if (pivots.First != pivot || HasTightPart(cells, board) || !TryFree(cells, digits, board, out var free))
            return true;
        var holders = cells & board[free];
        var gone = board[free] & holders.CommonPeers;
        return gone.IsEmpty || found.Add(new Deduction
        {
            Rule = Id,
            Cells = PatternCell.Each((Role.Pivot, pivots), (Role.Pincer, cells - pivots)),
            Digits = digits,
            RestsOn = RestsOn(cells, digits, free, board, gone),
            Removes = CandidateSet.Of(gone, free),
        });
    }

    // Two cells with two digits or three with three.
    private static bool HasTightPart(CellSet cells, Board board)
    {
        foreach (var one in cells)
        {
            var others = DigitSet.Empty;
            foreach (var other in cells.Without(one))
            {
                others |= board[other];
                if ((board[one] | board[other]).Count <= 2)
                    return true;
            }

            if (others.Count <= 3)
                return true;
        }

        return false;
    }

    // The only digit whose places in the cells do not all see each other.
    private static bool TryFree(CellSet cells, DigitSet digits, Board board, out Digit free)
    {
        var freeDigits = DigitSet.Empty;
        foreach (var digit in digits)
        {
            foreach (var cell in cells & board[digit])
            {
                if (!cell.Peers.ContainsAll((cells & board[digit]).Without(cell)))
                    freeDigits = freeDigits.With(digit);
            }
        }

        free = freeDigits.IsEmpty ? default : freeDigits.First;
        return freeDigits.Count == 1;
    }

    private static CandidateSet RestsOn(CellSet cells, DigitSet digits, Digit free, Board board, CellSet gone)
    {
        var rests = CandidateSet.Of(cells, ~digits);
        foreach (var digit in digits)
        {
            // Where the digit may stand: the free digit where all removed cells see it, another where its places see each other.
            // Where only one of two absences can be spared, it rests on the one that a placed digit shows to all.
            var harmless = cells & board[digit];
            var shown = SeenByPlaced(digit, cells, board) - harmless;
            foreach (var absent in (ReadOnlySpan<CellSet>)[cells - harmless - shown, shown])
            {
                foreach (var cell in absent)
                {
                    if (cell.Peers.ContainsAll(digit == free ? gone : harmless))
                        harmless = harmless.With(cell);
                }
            }

            rests = rests.WithPlane(digit, cells - harmless);
        }

        return rests;
    }

    private static CellSet SeenByPlaced(Digit digit, CellSet cells, Board board)
    {
        var seen = CellSet.Empty;
        foreach (var cell in cells)
        {
            foreach (var peer in cell.Peers & board.Filled)
            {
                if (board.DigitAt(peer) == digit)
                    seen = seen.With(cell);
            }
        }

        return seen;
    }
}
