using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Finned swordfish. Finds three parallel base lines in which a digit has its places in three cover lines, but for fins, which
/// all lie in one block; the digit goes from the cells of the cover lines that see all fins.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if no fin is true this is a swordfish, which clears its cover lines; and a fin that is true clears all that it
/// sees.
/// </para>
/// <code>
/// . o . | f f . | . . .      Base rows 1, 5 and 8, the digit's places o in
/// . . . | . . - | . . .      columns 2, 6 and 7, but for the fins f in block 2:
/// . . . | . . - | . . .      it goes from - in that block. Row 1 has no place
/// ------+-------+------      in column 6: this one is sashimi.
/// . . . | . . . | . . .
/// . o . | . . . | o . .
/// . . . | . . . | . . .
/// ------+-------+------
/// . . . | . . . | . . .
/// . . . | . . o | o . .
/// . . . | . . . | . . .
/// </code>
/// <para>Sashimi too: a base line that has one place left beside its fins, as row 1 here.</para>
/// <para>
/// All of them: one for each digit, set of base lines and set of cover lines, by digit, then rows before columns, then by lines.
/// Every base line has two or more places and every cover line a place in a base line. A fish of which a part removes the
/// same is left to that part. It rests on the digit's absence from the open cells of the base lines off the cover lines and off
/// the block of the fins.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class FinnedSwordfish : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("finned-swordfish");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => FinnedFish.Find(Id, size: 3, board, found);
}
