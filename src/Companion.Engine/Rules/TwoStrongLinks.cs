using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Two strong links. Finds two houses with two places each for a digit, of which one place of the first sees one of the second;
/// the digit goes from the cells that see both other places, the ends.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the two places in the middle see each other, so one of them is false, and then the end beside it is true.
/// </para>
/// <code>
/// . . e | . . - | . . .      Columns 3 and 7 have two places each for the
/// . . . | . . . | - . .      digit. The places o share row 5, so one of the
/// . . - | . . . | e . .      ends e is true: the digit goes from -.
/// ------+-------+------
/// . . . | . . . | . . .
/// . . o | . . . | o . .
/// </code>
/// <para>
/// All of them: one for each digit, pair of links and pair of ends, by digit, then by the houses of the links (rows, columns,
/// blocks), then by ends. The four places are different cells; four corners of a rectangle are an X-wing and left to
/// <see cref="XWing"/>. A pair of places alone in a line and a block counts for the line. It rests on the digit's absence from
/// the other open cells of both houses.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class TwoStrongLinks : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("two-strong-links");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        Span<StrongLink> room = stackalloc StrongLink[StrongLink.Most];
        foreach (var digit in Digit.All)
        {
            var links = StrongLink.Find(board, digit, room);
            for (var one = 0; one < links.Length; one++)
            {
                for (var other = one + 1; other < links.Length; other++)
                {
                    if (!links[one].Ends.Overlaps(links[other].Ends) && !Join(links[one], links[other], digit, board, found))
                        return;
                }
            }
        }
    }

    private bool Join(StrongLink one, StrongLink other, Digit digit, Board board, Findings found) =>
        Add(one, one.First, one.Second, other.First, other.Second, other, digit, board, found)
        && Add(one, one.First, one.Second, other.Second, other.First, other, digit, board, found)
        && Add(one, one.Second, one.First, other.First, other.Second, other, digit, board, found)
        && Add(one, one.Second, one.First, other.Second, other.First, other, digit, board, found);

    private bool Add(
        StrongLink one,
        Cell end,
        Cell near,
        Cell nearOther,
        Cell endOther,
        StrongLink other,
        Digit digit,
        Board board,
        Findings found)
    {
        if (!near.Sees(nearOther) || AreCorners(end, near, nearOther, endOther))
            return true;
        var gone = (board[digit] & end.Peers & endOther.Peers) - CellSet.Of(near, nearOther);
        return gone.IsEmpty || found.Add(new Deduction
        {
            Rule = Id,
            Cells = [new(end, Role.End), new(near, Role.Between), new(nearOther, Role.Between), new(endOther, Role.End)],
            Houses = HouseSet.Of(one.House, other.House),
            Digits = DigitSet.Of(digit),
            Links = [one.Of(digit), new(new(near, digit), new(nearOther, digit), IsStrong: false), other.Of(digit)],
            RestsOn = CandidateSet.Of((board.Open & (one.House.Cells | other.House.Cells)) - one.Ends - other.Ends, digit),
            Removes = CandidateSet.Of(gone, digit),
        });
    }

    // Only four corners lie in two rows and two columns.
    private static bool AreCorners(Cell end, Cell near, Cell nearOther, Cell endOther) =>
        ((end.Houses | near.Houses | nearOther.Houses | endOther.Houses) & HouseSet.Lines).Count == 4;
}
