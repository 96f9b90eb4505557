using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Continuous loop. Finds candidates in a ring, neighbours linked by turns strongly (two candidates of a cell, two places of a
/// digit in a house) and weakly (in a cell, or a digit in cells that see each other); whatever neither end of some weak link
/// leaves room for goes.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if a candidate of the ring is false its strong neighbour is true, so that the next is false, and so on all the
/// way round; and if it is true, the same the other way. So true and false take turns, and one end of every weak link is true.
/// </para>
/// <code>
/// 12 2- 2- | 2- 23 2- | 2- 2- 2-      2 in r1c1 and r1c5, 3 in r1c5 and r4c5,
/// 1- .  .  | .  3- .  | .  .  .       4 in r4c5 and r4c1, 1 in r4c1 and r1c1:
/// 1- .  .  | .  3- .  | .  .  .       a ring, so that row 1 has its 2 in two of
/// ---------+----------+---------      its cells, column 5 its 3, row 4 its 4
/// 14 4- 4- | 4- 34 4- | 4- 4- 4-      and column 1 its 1: the others go.
/// </code>
/// <para>
/// All of them: every candidate that goes by loops of single candidates, however long, but not by one of fewer than three strong
/// links; those are pairs and patterns of two lines. Each goes by one of its shortest loops, the shortest first, then by the
/// first candidate that goes; a loop counts only if something goes by it that does not by those before. A candidate whose
/// shortest loops all come to some candidate twice is left out. It rests on the absent candidates of the cells, and on the
/// digits' absence from the other open cells of the houses, that its strong links need.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class ContinuousLoop : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("continuous-loop");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => LoopFinder.For(board).Find(Id, board, fewest: 3, found);
}
