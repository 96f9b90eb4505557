using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Hidden unique rectangle. Finds four cells in two rows, two columns and two blocks that share two candidates, and a corner in
/// which one of the digits would force the other three, by strong links within the rectangle or because they have no third
/// candidate; that digit goes from the corner.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: with the digit in that corner the four would hold the two digits crosswise, and the digits could be exchanged.
/// But the puzzle has one solution.
/// </para>
/// <code>
/// 58 . . | 58+ . . | . . .      r1c1 has only 5 and 8. Row 2 and column 4 have no
/// 58+. . | 58+ . . | . . .      other places for 5: if r2c4 were 8, r2c1 and r1c4
/// .  . . | .   . . | . . .      would be 5 and r1c1 8. So 8 goes from r2c4.
/// </code>
/// <para>
/// Among them are the rectangles with two cells that have only the two digits, side by side or crosswise, and a strong link
/// on one of the digits between the others.
/// </para>
/// <para>
/// All of them: one for each rectangle and way to force the corners, by rows, then by columns, then by corner and digit; corners
/// that go the same way are one. Both digits stand in all four cells, and one or two of the cells have no other. A neighbour of
/// the corner is forced to the second digit, the cell opposite to the first. Each of them is forced by its own two candidates or
/// else by the first house (row, column, block) that has no other place for its digit than the cell and a corner settled before.
/// One that needs no link, as with three cells that have no other, is left to <see cref="UniqueRectangle"/>. It rests on the
/// other digits' absence from the cells with two candidates and on the digits' absence from the other open cells of the houses of
/// the links.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class HiddenUniqueRectangle : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("hidden-unique-rectangle");

    /// <inheritdoc/>
    public bool AssumesOneSolution => true;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        Span<Forced> ways = stackalloc Forced[8];
        foreach (var rectangle in Rectangle.All)
        {
            if (!rectangle.HasPair(board, out var pair, out var floor) || floor.Count > 2)
                continue;
            var count = 0;
            for (var corner = 0; corner < 4; corner++)
            {
                foreach (var digit in pair)
                {
                    if (TryForce(rectangle, corner, digit, pair, floor, board, out var forced))
                        count = Gather(ways, count, forced);
                }
            }

            foreach (var forced in ways[..count])
            {
                if (!found.Add(Deduce(rectangle, pair, forced, board)))
                    return;
            }
        }
    }

    /// <summary>How a digit in one corner forces the others.</summary>
    /// <param name="Floor">The corners that have no third candidate.</param>
    /// <param name="First">The houses of the links on the smaller digit.</param>
    /// <param name="Second">The houses of the links on the greater digit.</param>
    /// <param name="Gone">What goes.</param>
    private readonly record struct Forced(CellSet Floor, HouseSet First, HouseSet Second, CandidateSet Gone);

    private static bool TryForce(
        Rectangle rectangle, int corner, Digit digit, DigitSet pair, CellSet floor, Board board, out Forced forced)
    {
        forced = default;
        var start = rectangle[corner];
        var (beside, below, opposite) = (rectangle[corner ^ 1], rectangle[corner ^ 2], rectangle[3 - corner]);
        var other = pair.Without(digit).First;
        var (ofOther, ofDigit) = (HouseSet.Empty, HouseSet.Empty);
        if (floor.Without(start).IsEmpty
            || !TryLink(beside, LinksBetween(beside, start, other, board), floor, ref ofOther)
            || !TryLink(below, LinksBetween(below, start, other, board), floor, ref ofOther)
            || !TryLink(
                opposite,
                LinksBetween(opposite, beside, digit, board) | LinksBetween(opposite, below, digit, board),
                floor,
                ref ofDigit)
            || (ofOther | ofDigit).IsEmpty)
            return false;
        var (first, second) = digit == pair.First ? (ofDigit, ofOther) : (ofOther, ofDigit);
        forced = new(floor.Without(start), first, second, CandidateSet.Of(new Candidate(start, digit)));
        return true;
    }

    // A corner without a third candidate needs no link.
    private static bool TryLink(Cell cell, HouseSet links, CellSet floor, ref HouseSet used)
    {
        if (floor.Contains(cell))
            return true;
        if (links.IsEmpty)
            return false;
        used = used.With(links.First);
        return true;
    }

    private static HouseSet LinksBetween(Cell one, Cell two, Digit digit, Board board)
    {
        var links = HouseSet.Empty;
        foreach (var house in one.Houses & two.Houses)
        {
            if ((board[digit] & house.Cells).Count == 2)
                links = links.With(house);
        }

        return links;
    }

    // Ways that differ only in what goes are one.
    private static int Gather(Span<Forced> ways, int count, in Forced way)
    {
        for (var index = 0; index < count; index++)
        {
            if (ways[index] == way with { Gone = ways[index].Gone })
            {
                ways[index] = way with { Gone = ways[index].Gone | way.Gone };
                return count;
            }
        }

        ways[count] = way;
        return count + 1;
    }

    private Deduction Deduce(Rectangle rectangle, DigitSet pair, in Forced forced, Board board)
    {
        var (first, second) = (pair.First, pair.Without(pair.First).First);
        var links = ImmutableArray.CreateBuilder<Link>(forced.First.Count + forced.Second.Count);
        foreach (var house in forced.First)
            links.Add(LinkIn(rectangle.Cells & house.Cells, first));
        foreach (var house in forced.Second)
            links.Add(LinkIn(rectangle.Cells & house.Cells, second));
        return new()
        {
            Rule = Id,
            Cells = PatternCell.Each((Role.Floor, forced.Floor), (Role.Roof, rectangle.Cells - forced.Floor)),
            Houses = forced.First | forced.Second,
            Digits = pair,
            Links = links.MoveToImmutable(),
            RestsOn = CandidateSet.Of(forced.Floor, ~pair)
                | CandidateSet.Of((board.Open & forced.First.Cells) - board[first], first)
                | CandidateSet.Of((board.Open & forced.Second.Cells) - board[second], second),
            Removes = forced.Gone,
            AssumesOneSolution = true,
        };
    }

    private static Link LinkIn(CellSet ends, Digit digit) =>
        new(new(ends.First, digit), new(ends.Without(ends.First).First, digit), IsStrong: true);
}
