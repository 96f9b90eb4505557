using System.Collections.Immutable;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Viewers;

namespace Companion.Session.Asks;

/// <summary>An answer with those whom it is for.</summary>
/// <param name="Way">The way by which it goes out.</param>
/// <param name="Answer">The answer, of the type of what it may say.</param>
/// <param name="Viewers">Those who asked, at least one; on a way that is not shared exactly one.</param>
/// <param name="Names">The names to speak to; none where they are more than a line should name.</param>
public sealed record Answered(Way Way, Answer Answer, ImmutableArray<ViewerId> Viewers, ImmutableArray<string> Names);
