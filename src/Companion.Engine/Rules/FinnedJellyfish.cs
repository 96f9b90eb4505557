using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Finned jellyfish. Finds four parallel base lines in which a digit has its places in four cover lines, but for fins, which all
/// lie in one block; the digit goes from the cells of the cover lines that see all fins.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if no fin is true this is a jellyfish, which clears its cover lines; and a fin that is true clears all that it
/// sees.
/// </para>
/// <code>
/// o f . | o . . | . . .      Base rows 1, 4, 5 and 7, the digit's places o in
/// - . . | . . . | . . .      columns 1, 4, 6 and 8, but for the fin f in block 1:
/// - . . | . . . | . . .      it goes from - in that block.
/// ------+-------+------
/// . . . | o . . | . o .
/// o . . | . . o | . . .
/// . . . | . . . | . . .
/// ------+-------+------
/// . . . | . . o | . o .
/// </code>
/// <para>Sashimi too: a base line that has one place left beside its fins, as row 1 without the o in column 1.</para>
/// <para>
/// All of them: one for each digit, set of base lines and set of cover lines, by digit, then rows before columns, then by lines.
/// Every base line has two or more places and every cover line a place in a base line. A fish of which a part removes the
/// same is left to that part. It rests on the digit's absence from the open cells of the base lines off the cover lines and off
/// the block of the fins.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class FinnedJellyfish : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("finned-jellyfish");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => FinnedFish.Find(Id, size: 4, board, found);
}
