using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Remote pairs. Finds a chain of cells with the same two candidates, each of which sees the next, in two colours that change
/// from cell to cell; both digits go from the cells outside that see both colours.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: neighbours in the chain hold different digits of the two, so all cells of one colour hold the one digit and
/// all of the other colour the other. A cell that sees both colours sees both digits.
/// </para>
/// <code>
/// .  .  .  | .  .  .  | .  .  .
/// 58 .  .  | .  .  .  | .  .  .      r5c1, r2c1, r3c3 and r3c7 hold 5 and 8 in turn,
/// .  .  58 | .  .  .  | 58 .  .      so r5c1 and r3c7 hold both: 5 and 8 go from -,
/// ---------+----------+---------      which sees both.
/// .  .  .  | .  .  .  | .  .  .
/// 58 .  .  | .  .  .  | -  .  .
/// </code>
/// <para>
/// All of them: one for each set of cells joined so, by the first cell. Cells at loose ends that no removed cell sees are left
/// out. A cell that sees two neighbours of the chain is left to <see cref="NakedPair"/>, so the chain has four cells or more. It
/// rests on the other digits' absence from its cells.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class RemotePairs : IRule
{
    private const int Fewest = 4;

    /// <inheritdoc/>
    public RuleId Id { get; } = new("remote-pairs");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        Span<CellSet> joined = stackalloc CellSet[Cell.Count];
        var bivalue = board.CellsWith(2);
        var painted = CellSet.Empty;
        foreach (var start in bivalue)
        {
            if (painted.Contains(start))
                continue;
            var pair = board[start];
            var alike = bivalue & board[pair.First] & board[pair.Without(pair.First).First];
            if (alike.Count < Fewest)
                continue;
            foreach (var cell in alike)
                joined[cell.Index] = alike & cell.Peers;
            var colours = TwoColours.From(start, joined);
            painted |= colours.Cells;
            if (!colours.IsGood)
                continue;
            var gone = board.Standing(colours.SeenTwice(joined), pair);
            if (gone.IsEmpty)
                continue;
            var needed = colours.Between(TwoColours.SeenBy(gone.Cells), joined).InReadingOrder();
            if (!found.Add(Deduce(needed, joined, pair, gone)))
                return;
        }
    }

    private Deduction Deduce(TwoColours colours, ReadOnlySpan<CellSet> joined, DigitSet pair, in CandidateSet gone)
    {
        var count = 0;
        foreach (var cell in colours.First)
            count += (joined[cell.Index] & colours.Second).Count;
        var links = ImmutableArray.CreateBuilder<Link>(count * pair.Count);
        foreach (var cell in colours.First)
        {
            foreach (var next in joined[cell.Index] & colours.Second)
            {
                foreach (var digit in pair)
                    links.Add(new(new(cell, digit), new(next, digit), IsStrong: false));
            }
        }

        return new()
        {
            Rule = Id,
            Cells = PatternCell.Each((Role.FirstColour, colours.First), (Role.SecondColour, colours.Second)),
            Digits = pair,
            Links = links.MoveToImmutable(),
            RestsOn = CandidateSet.Of(colours.Cells, ~pair),
            Removes = gone,
        };
    }
}
