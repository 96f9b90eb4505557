using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// W-wing. Finds two cells with the same two candidates that do not see each other, and a strong link on one of the two digits
/// whose ends each see one of them; the other digit goes from the cells outside that see both cells.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: one end of the link is true, and the cell that sees it has to take its other digit.
/// </para>
/// <code>
/// .  .  .  | .  .  .  | .  .  .
/// .  58 .  | .  .  .  | -  -  -      r2c2 and r3c8 have 5 and 8. Row 7 has only the
/// -  -  -  | .  .  .  | .  58 .      places o for 5, one under each of them:
/// ---------+----------+---------      8 goes from -, which see both.
/// .  .  .  | .  .  .  | .  .  .
/// .  .  .  | .  .  .  | .  .  .
/// .  .  .  | .  .  .  | .  .  .
/// ---------+----------+---------
/// .  o  .  | .  .  .  | .  o  .
/// </code>
/// <para>
/// All of them: one for each pair of cells, digit and link, by cells, then by the digit of the link, then by the link's house
/// (rows, columns, blocks). A pair of places alone in a line and a block counts for the line. It rests on the absent candidates
/// of the two cells and on the digit's absence from the other open cells of the link's house.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class WWing : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("w-wing");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var rest = board.CellsWith(2);
        foreach (var first in rest)
        {
            rest = rest.Without(first);
            foreach (var second in (rest & board[board[first].First]) - first.Peers)
            {
                if (board[first] != board[second])
                    continue;
                foreach (var linked in board[first])
                {
                    if (!Find(first, second, linked, board[first].Without(linked).First, board, found))
                        return;
                }
            }
        }
    }

    private bool Find(Cell first, Cell second, Digit linked, Digit other, Board board, Findings found)
    {
        var gone = board[other] & first.Peers & second.Peers;
        if (gone.IsEmpty)
            return true;
        Span<StrongLink> room = stackalloc StrongLink[StrongLink.Most];
        foreach (var link in StrongLink.Find(board, linked, room))
        {
            var straight = first.Sees(link.First) && second.Sees(link.Second);
            if (!straight && !(first.Sees(link.Second) && second.Sees(link.First)))
                continue;
            var (near, far) = straight ? (link.First, link.Second) : (link.Second, link.First);
            var outside = gone - link.Ends;
            if (near != second && far != first && !outside.IsEmpty
                && !found.Add(Deduce(first, near, far, second, link, linked, other, board, outside)))
                return false;
        }

        return true;
    }

    private Deduction Deduce(
        Cell first, Cell near, Cell far, Cell second, StrongLink link, Digit linked, Digit other, Board board, CellSet gone) =>
        new()
        {
            Rule = Id,
            Cells = [new(first, Role.End), new(near, Role.Between), new(far, Role.Between), new(second, Role.End)],
            Houses = HouseSet.Of(link.House),
            Digits = DigitSet.Of(linked, other),
            Links =
            [
                new(new(first, linked), new(near, linked), IsStrong: false),
                link.Of(linked),
                new(new(far, linked), new(second, linked), IsStrong: false),
            ],
            RestsOn = CandidateSet.Of(CellSet.Of(first, second), ~DigitSet.Of(linked, other))
                | CandidateSet.Of((board.Open & link.House.Cells) - link.Ends, linked),
            Removes = CandidateSet.Of(gone, other),
        };
}
