using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Simple colouring. Finds the places of one digit that strong links join, in two colours that change along each link. If two
/// cells of one colour see each other, the digit goes from that colour; and it goes from the cells outside that see both colours.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: along a strong link one place is true and the other false, so one colour is all true and the other all false. A
/// colour with two cells in one house cannot be true; and a cell that sees both colours sees a true one in any case.
/// </para>
/// <code>
/// x . . | . y . | . . .      Rows 1 and 7, columns 1 and 5 and block 9 have two
/// . . . | . . . | . . .      places each for the digit: colours x and y.
/// . . . | . . . | . . .      It goes from -, which sees an x and a y.
/// ------+-------+------
/// . . . | . . . | . . .
/// y . . | . . . | . - .
/// . . . | . . . | . . .
/// ------+-------+------
/// . . . | . x . | y . .
/// . . . | . . . | . x .
/// . . . | . . . | . . .
/// </code>
/// <para>
/// All of them: for each digit and each set of joined places, one for a colour that goes and one for the cells outside, by digit,
/// then by the first place. Places that the conclusion does not need, at loose ends, are left out: such as no removed cell sees,
/// or of the colour that stays. Cells that see two joined places, and colours in which only places joined to the same third see
/// each other, are left to <see cref="Pointing"/> and <see cref="Claiming"/>. A pair of places alone in a line and a block counts
/// for the line. It rests on the digit's absence from the other open cells of the houses of the links.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class SimpleColouring : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("simple-colouring");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        Span<StrongLink> room = stackalloc StrongLink[StrongLink.Most];
        Span<CellSet> joined = stackalloc CellSet[Cell.Count];
        foreach (var digit in Digit.All)
        {
            var links = StrongLink.Find(board, digit, room);
            if (links.Length < 3) // Fewer join three places at most, which share a house or two.
                continue;
            joined.Clear();
            foreach (var link in links)
            {
                joined[link.First.Index] = joined[link.First.Index].With(link.Second);
                joined[link.Second.Index] = joined[link.Second.Index].With(link.First);
            }

            if (!Find(board, digit, links, joined, found))
                return;
        }
    }

    private bool Find(Board board, Digit digit, ReadOnlySpan<StrongLink> links, ReadOnlySpan<CellSet> joined, Findings found)
    {
        var painted = CellSet.Empty;
        foreach (var start in board[digit])
        {
            if (painted.Contains(start) || joined[start.Index].IsEmpty)
                continue;
            var colours = TwoColours.From(start, joined);
            painted |= colours.Cells;
            if (!colours.IsGood)
                continue;
            if (!FindFalse(colours with { First = colours.Second, Second = colours.First }, board, digit, links, joined, found)
                || !FindFalse(colours, board, digit, links, joined, found))
                return false;
            var seen = board[digit] & colours.SeenTwice(joined);
            if (seen.IsEmpty)
                continue;
            var needed = colours.Between(TwoColours.SeenBy(seen), joined).InReadingOrder();
            if (!found.Add(Deduce(board, digit, needed, links, seen)))
                return false;
        }

        return true;
    }

    // The second colour, where it is false.
    private bool FindFalse(
        TwoColours colours,
        Board board,
        Digit digit,
        ReadOnlySpan<StrongLink> links,
        ReadOnlySpan<CellSet> joined,
        Findings found) =>
        !Clash(colours.Second, joined)
        || found.Add(Deduce(board, digit, colours.Between(colours.Second, joined), links, colours.Second));

    private static bool Clash(CellSet colour, ReadOnlySpan<CellSet> joined)
    {
        foreach (var cell in colour)
        {
            foreach (var other in colour & cell.Peers)
            {
                if (!joined[cell.Index].Overlaps(joined[other.Index]))
                    return true;
            }
        }

        return false;
    }

    private Deduction Deduce(Board board, Digit digit, TwoColours colours, ReadOnlySpan<StrongLink> links, CellSet gone)
    {
        var houses = HouseSet.Empty;
        foreach (var link in links)
        {
            if (colours.Cells.ContainsAll(link.Ends))
                houses = houses.With(link.House);
        }

        var drawn = ImmutableArray.CreateBuilder<Link>(houses.Count);
        foreach (var link in links)
        {
            if (houses.Contains(link.House))
                drawn.Add(link.Of(digit));
        }

        return new()
        {
            Rule = Id,
            Cells = PatternCell.Each((Role.FirstColour, colours.First), (Role.SecondColour, colours.Second)),
            Houses = houses,
            Digits = DigitSet.Of(digit),
            Links = drawn.MoveToImmutable(),
            RestsOn = CandidateSet.Of((board.Open & houses.Cells) - board[digit], digit),
            Removes = CandidateSet.Of(gone, digit),
        };
    }
}
