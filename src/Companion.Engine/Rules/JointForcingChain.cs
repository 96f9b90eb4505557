using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Joint forcing chain. Finds two cells, or a digit in each of two houses, or one of each, that cannot both have what only one of
/// them can have, so that one of their other candidates is true; from each of these a chain leads to the same conclusion: the same
/// candidate goes, or the same digit is placed.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each of the two cells has one of its candidates, and the digit has one of its places in each of the two houses.
/// Where all that the two share with some cell, or with the places of some digit in some house, is left to them, they cannot both
/// have it, since only one candidate is true there. So one of the two has something else, and from whatever it is, the chain leads
/// to the conclusion.
/// </para>
/// <code>
/// -  . 19  | . . . | 39  89 .      Only one of r5c3 and r5c7 can be 5. If r5c3 is 1, r1c3
/// .  . .   | . . . | .   .  .      is 9; if it is 2, r5c1 is 9; if r5c7 is 3, r1c7 is 9;
/// .  . .   | . . . | .   .  .      if it is 4, r4c8 is 8 and r1c8 is 9. In any case 9
/// ---------+-------+---------      goes from -.
/// .  . .   | . . . | .   48 .
/// 29 . 125 | . . . | 345 .  .
/// </code>
/// <para>
/// Its chains go through all that other chains go through, and through X-wings: without its fin, an X-wing has one of its places in
/// each of the lines across. Each link still follows from the one before it alone.
/// </para>
/// <para>
/// All of them: every conclusion that follows so by chains of candidates, groups, almost locked sets of at most five cells each, and
/// X-wings with at most three places in the fin, with at most forty links in all, two or more from at least one of the candidates,
/// but not by one such chain. Each of the two has three candidates or more. Each conclusion follows from two with the fewest links in
/// all, the fewest first, then by the candidate; what else the ends of the chains exclude goes with it. It rests on what makes one
/// candidate of each of the two true, and on all that its chains' strong links need.
/// </para>
/// <para>
/// Cost: from each candidate, true and false, a walk over rows of bits, and a comparison with each part of a cell or house. Some tens
/// of milliseconds.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class JointForcingChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("joint-forcing-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.LastResort;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => JointForcing.For(board, found.Cores > 1).Find(Id, board, found);
}
