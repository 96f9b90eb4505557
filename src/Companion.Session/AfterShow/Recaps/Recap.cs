using System.Collections.Immutable;
using Companion.Session.Chapters;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>What a show was, worked out from what was stored of it. Data only; writers put it into words.</summary>
/// <param name="Title">The show's title; may be empty.</param>
/// <param name="Length">How long its video is.</param>
/// <param name="Chapters">Where the time went: its chapters, in order.</param>
/// <param name="Puzzles">The puzzles that were worked on, in order.</param>
public sealed record Recap(
    string Title, TimeSpan Length, ImmutableArray<ChapterMark> Chapters, ImmutableArray<RecapPuzzle> Puzzles);
