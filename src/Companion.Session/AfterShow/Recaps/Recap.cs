using System.Collections.Immutable;
using Companion.Session.Chapters;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>What a show was, worked out from what was stored of it. Data only; writers put it into words.</summary>
/// <param name="Title">The show's title; may be empty.</param>
/// <param name="Length">How long its video is.</param>
/// <param name="Chapters">Its chapters, in order.</param>
/// <param name="Topics">Where the time went: what the show was about, in order, each with when it began in the video and for how long.</param>
/// <param name="Said">The talking points that were marked as done, in order, each with when it last was.</param>
/// <param name="Puzzles">The puzzles that were worked on, in order.</param>
public sealed record Recap(
    string Title,
    TimeSpan Length,
    ImmutableArray<ChapterMark> Chapters,
    ImmutableArray<(Topic Topic, TimeSpan At, TimeSpan Length)> Topics,
    ImmutableArray<(TimeSpan At, string Text)> Said,
    ImmutableArray<RecapPuzzle> Puzzles);
