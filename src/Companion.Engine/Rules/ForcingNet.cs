using Companion.Engine.Proofs;
using Companion.Engine.Rules.Nets;

namespace Companion.Engine.Rules;

/// <summary>
/// Forcing net. Finds a candidate which, once it is supposed to be true, leads by singles to a cell without a candidate or to a house
/// in which a digit has no place; the candidate goes.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each single follows from the candidate and from what came before it, and the end cannot be. So the candidate is
/// false. It is a net, not a chain, because a single may need several of the steps before it.
/// </para>
/// <code>
/// #  .  . | 12 . . | . . .      If # is 1, r1c4 can only be 2, so that the 2 of row 7,
/// .  .  . | .  . . | . . .      which has two places, is in r7c2; and r4c1 can only
/// .  .  . | .  . . | . . .      be 3. Together they leave nothing for r4c2. So # is
/// --------+--------+------      not 1.
/// 13 23 . | .  . . | . . .
/// .  .  . | .  . . | . . .
/// .  .  . | .  . . | . . .
/// --------+--------+------
/// .  2  . | 2  . . | . . .
/// </code>
/// <para>
/// All of them: every candidate that a sequence of singles refutes, if no candidate is refuted by a sequence with fewer singles:
/// each single is a step, and no net on the board has fewer steps than those that are given, by the candidate. Of several nets with
/// as few steps for a candidate it is the first in a fixed order. A step is said in the way for which the fewest candidates had to
/// go. It rests on the absent candidates of the cells, and on the digits' absence from the other open cells of the houses, that its
/// steps and its end need.
/// </para>
/// <para>
/// Cost: milliseconds on most boards, some tens of them where the shortest net has fifteen steps and more.
/// </para>
/// <para>
/// Source: common practice. To find a shortest net, longer and longer ones are tried: iterative deepening (R. Korf, "Depth-First
/// Iterative-Deepening", Artificial Intelligence 27, 1985; from memory). What cannot lead to one of so few steps is told by landmarks
/// (M. Helmert and C. Domshlak, "Landmarks, Critical Paths and Abstractions", ICAPS 2009; P. Haslum, J. Slaney and S. Thiébaux, "Minimal
/// Landmarks for Optimal Delete-Free Planning", ICAPS 2012; both from memory).
/// </para>
/// </remarks>
public sealed class ForcingNet : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("forcing-net");

    /// <inheritdoc/>
    public Effort Effort => Effort.LastResort;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => NetSearch.Find(Id, board, found);
}
