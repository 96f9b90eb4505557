using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Blossom of almost locked sets. Finds a cell, the stem, and for each of its candidates an almost locked set in which that digit
/// cannot stand beside it, all with one digit in common; that digit goes from the cells that see all its places in the sets.
/// </summary>
/// <remarks>
/// <para>
/// An almost locked set is some cells of a house that have one candidate more between them than there are cells; a cell with two
/// candidates is the smallest. Without one of its digits it holds all the others.
/// </para>
/// <para>
/// Why it holds: the stem holds one of its candidates. The set that is linked with it lacks that digit then and holds all its others,
/// the common one among them. So in any case one of the sets holds it. A candidate of the stem that cannot stand together with what
/// goes needs no set.
/// </para>
/// <code>
/// -  . . | . 29  . | . . .         The stem is r5c5. If it is 1, r5c1 is 9; if it is 2,
/// .  . . | . .   . | . . .         r1c5 is 9; if it is 3, r9c5 is 8 and r9c1 is 9. In
/// .  . . | . .   . | . . .         any case 9 goes from -.
/// -------+---------+------
/// .  . . | . .   . | . . .
/// 19 . . | . 123 . | . . .
/// .  . . | . .   . | . . .
/// -------+---------+------
/// .  . . | . .   . | . . .
/// .  . . | . .   . | . . .
/// 89 . . | . 38  . | . . .
/// </code>
/// <para>
/// All of them: every candidate that goes by a stem with three or more candidates and sets of at most five cells each, no part of
/// which is a naked subset, but not by a chain of up to three sets. Each goes by one of its blossoms with the fewest links, the
/// fewest first, then by the candidate. It rests on the absent candidates of the stem and the sets, and on where else in the sets
/// the linking digits are not.
/// </para>
/// <para>Cost: for each candidate a step over rows of bits, and a comparison with each cell. A twentieth of a millisecond.</para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class AlmostLockedSetBlossom : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("almost-locked-set-blossom");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Forcing.OfBlossoms(board).Find(Id, board, fromHouses: false, found);
}
