using System.Collections.Immutable;
using Companion.Session.Asks.Answers;

namespace Companion.Server.Live.Asks;

/// <summary>What came of an ask.</summary>
/// <param name="Answer">What the viewer is told, for a page to show; null where nothing is said.</param>
/// <param name="Lines">
/// What to say in the chat, in order. Where several were answered together, those after the first have none: the first one's lines
/// name them all.
/// </param>
internal sealed record AskReply(Answer? Answer, ImmutableArray<string> Lines)
{
    /// <summary>Nothing is said.</summary>
    public static AskReply Nothing { get; } = new(null, []);
}
