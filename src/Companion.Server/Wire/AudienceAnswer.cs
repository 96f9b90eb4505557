using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;

namespace Companion.Server.Wire;

/// <summary>What a viewer's page is answered. It goes to the page that asked and to no other.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Words">What it says, in paragraphs; none where nothing is said.</param>
/// <param name="Grade">The grade of a hint; null for all else.</param>
/// <param name="Picture">What is drawn on the board: for a hint what its grade gives, for a reason the deduction; else null.</param>
public sealed record AudienceAnswer(AnswerKind Kind, ImmutableArray<string> Words, Grade? Grade, Picture? Picture)
{
    /// <summary>Nothing is said: asks are off, or came too soon after one another.</summary>
    public static AudienceAnswer Nothing { get; } = new(AnswerKind.Nothing, [], null, null);

    /// <summary>A plain sentence.</summary>
    /// <param name="sentence">The sentence.</param>
    internal static AudienceAnswer Notice(string sentence) => new(AnswerKind.Notice, [sentence], null, null);
}
