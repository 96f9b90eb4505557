using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Jellyfish. Finds four parallel base lines in which a digit has its places in four cover lines; the digit goes from the
/// rest of the cover lines.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each base line holds the digit, in one of the four cover lines, and no two in the same. So the four base
/// lines use up the four cover lines.
/// </para>
/// <code>
/// o . . | o . . | . . .      Base rows 1, 4, 5 and 7, the digit's places o
/// - . . | - . - | . - .      all in columns 1, 4, 6 and 8:
/// - . . | - . - | . - .      it goes from the rest of these columns.
/// ------+-------+------
/// . . . | o . . | . o .
/// o . . | . . o | . . .
/// - . . | - . - | . - .
/// ------+-------+------
/// . . . | . . o | . o .
/// - . . | - . - | . - .
/// - . . | - . - | . - .
/// </code>
/// <para>
/// All of them: one for each digit and set of base lines, by digit, then rows before columns, then by lines. Every base line has
/// two or more places, and no two or three of them are an X-wing or swordfish. It rests on the digit's absence from the open
/// cells of the base lines off the cover lines.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class Jellyfish : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("jellyfish");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Fish.Find(Id, size: 4, board, found);
}
