using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Grouped chain. Finds chains like alternating inference chains in which a link may also end in a group: a digit in one of some
/// cells where a block and a line meet. Two groups that are all places of a digit in a house are linked strongly, and a group
/// weakly with what all its cells see. Whatever neither end leaves room for goes.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: a group is true if one of its cells holds the digit and false if none does. So where all places of a digit in a
/// house are two groups and one of them is false, the other is true; and a group that is true leaves no room for the digit in the
/// cells that all its cells see. The rest is as with single candidates.
/// </para>
/// <code>
/// 1- . . | . . . | 1 1 .       Row 1 has its 1 in r1c1 or in the group r1c7, r1c8. If
/// .  . . | . . . | . . .       r1c1 is not 1, one of the group is, so that r3c9 is not 1
/// .  . . | . . . | . . 15      but 5, r7c9 is not 5, and r7c1 is, since row 7 has two
/// -------+-------+--------     places for 5. In either case 5 goes from r1c1 and 1 from
/// .  . . | . . . | . . .       r7c1.
/// .  . . | . . . | . . .
/// .  . . | . . . | . . .
/// -------+-------+--------
/// 5- . . | . . . | . . 5
/// </code>
/// <para>
/// All of them: every candidate that goes by chains of candidates and groups, however long, with fewer strong links than by single
/// candidates alone. Each goes by one of its shortest chains, the shortest first, then by the first candidate that goes; a chain
/// counts only if something goes by it that does not by those before. Where its ends cannot both be true it is a loop, and whatever
/// neither end of some weak link leaves room for goes. Two strong links of one digit in a block and elsewhere or in parallel lines
/// are left to <see cref="EmptyRectangle"/> and <see cref="FinnedXWing"/>, and a candidate whose shortest chains all come to some
/// node twice is left out. It rests on the absent candidates of the cells, and on the digits' absence from the other open cells of
/// the houses, that its strong links need.
/// </para>
/// <para>
/// Cost: a walk over rows of bits from each candidate, a tenth of a millisecond; a graph of the board is made once for it and the
/// rules after it.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class GroupedChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("grouped-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        var chains = ChainFinder.For(board, ChainKind.Grouped);
        var ofOneDigit = ChainFinder.For(board, ChainKind.GroupedOneDigit);
        Span<int> limits = stackalloc int[chains.Graph.Singles];
        ChainFinder.For(board, ChainKind.Plain).Depths.CopyTo(limits);
        for (var single = 0; single < limits.Length; single++)
        {
            if (ofOneDigit.Depths[single] == 2 && IsOfEasierRule(single, ofOneDigit.Graph, board))
                limits[single] = 0;
        }

        chains.Find(Id, board, fewest: 2, limits, found);
    }

    // Two links of one digit are an empty rectangle where one is in a block, and a finned X-wing where they are in parallel lines.
    private static bool IsOfEasierRule(int single, ChainGraph graph, Board board)
    {
        var excluded = graph.Excluded(single);
        foreach (var first in new SharedNodes(excluded, excluded))
        {
            foreach (var second in new SharedNodes(graph.Strong(first), graph.Strong(first)))
            {
                foreach (var third in new SharedNodes(graph.Weak(second), graph.Weak(second)))
                {
                    foreach (var last in new SharedNodes(graph.Strong(third), excluded))
                    {
                        var kinds = (KindOf(graph[first], graph[second], board), KindOf(graph[third], graph[last], board));
                        if (kinds is not ((HouseKind.Row, HouseKind.Column) or (HouseKind.Column, HouseKind.Row)))
                            return true;
                    }
                }
            }
        }

        return false;
    }

    // Of the house in which these are all places of the digit; a line where there is a choice.
    private static HouseKind KindOf(Node one, Node other, Board board)
    {
        var places = one.Cells | other.Cells;
        foreach (var house in places.CommonHouses)
        {
            if ((board[one.Digit] & house.Cells) == places)
                return house.Kind;
        }

        throw new InvalidOperationException("The strong link has no house.");
    }
}
