using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Unique rectangle. Finds four cells in two rows, two columns and two blocks that share two candidates, three of them with no
/// other; both digits go from the fourth.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the fourth cell held one of the digits, the four would hold the two digits crosswise, and the digits could be
/// exchanged. But the puzzle has one solution.
/// </para>
/// <code>
/// 58 . . | 58  . . | . . .      Three corners in rows 1 and 2, columns 1 and 4 have
/// 58 . . | 58+ . . | . . .      only 5 and 8: these go from r2c4.
/// .  . . | .   . . | . . .
/// </code>
/// <para>
/// All of them: one for each rectangle, by rows, then by columns. Both digits stand in all four cells. It rests on the other
/// digits' absence from the three.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class UniqueRectangle : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("unique-rectangle");

    /// <inheritdoc/>
    public bool AssumesOneSolution => true;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var rectangle in Rectangle.All)
        {
            if (!rectangle.HasPair(board, out var pair, out var floor) || floor.Count != 3)
                continue;
            var roof = rectangle.Cells - floor;
            var more = found.Add(new Deduction
            {
                Rule = Id,
                Cells = PatternCell.Each((Role.Floor, floor), (Role.Roof, roof)),
                Digits = pair,
                RestsOn = CandidateSet.Of(floor, ~pair),
                Removes = CandidateSet.Of(roof, pair),
                AssumesOneSolution = true,
            });
            if (!more)
                return;
        }
    }
}
