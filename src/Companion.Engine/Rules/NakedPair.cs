using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Naked pair. Finds two cells of a house with the same two candidates; both digits go from the other cells that see the
/// pair.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the two cells hold two different digits and only these two can go there, so each of the digits is in one of
/// the cells.
/// </para>
/// <code>
/// 58 58 -  | -  -  -      r1c1 and r1c2 share 5 and 8, and both lie in row 1
/// -  -  -  | .  .  .      and in block 1: 5 and 8 go from the rest of both.
/// -  -  -  | .  .  .
/// </code>
/// <para>
/// All of them: one for each set of cells, by house (rows, columns, blocks), then by cells. Each cell has two candidates. The
/// digits go from every cell that sees all two cells; a pair in one block and one line clears both houses. It rests on the
/// other digits' absence from the two cells.
/// </para>
/// <para>Source: common practice; the occupancy theorem of J. F. Crook, Notices of the AMS 56(4), 2009, 460-468.</para>
/// </remarks>
public sealed class NakedPair : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("naked-pair");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => NakedSubsets.Find(Id, size: 2, board, found);
}
