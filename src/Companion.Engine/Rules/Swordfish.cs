using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Swordfish. Finds three parallel base lines in which a digit has its places in three cover lines; the digit goes from the
/// rest of the cover lines.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each base line holds the digit, in one of the three cover lines, and no two in the same. So the three base
/// lines use up the three cover lines.
/// </para>
/// <code>
/// . o . | o . . | . . .      Base rows 1, 3 and 5, the digit's places o
/// . - . | - . . | - . .      all in columns 2, 4 and 7:
/// . . . | o . . | o . .      it goes from the rest of these columns.
/// ------+-------+------
/// . - . | - . . | - . .
/// . o . | . . . | o . .
/// </code>
/// <para>
/// All of them: one for each digit and set of base lines, by digit, then rows before columns, then by lines. Every base line has
/// two or more places, and no two of them are an X-wing. It rests on the digit's absence from the open cells of the base lines
/// off the cover lines.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class Swordfish : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("swordfish");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Fish.Find(Id, size: 3, board, found);
}
