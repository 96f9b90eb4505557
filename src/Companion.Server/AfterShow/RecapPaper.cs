using System.Collections.Immutable;
using Companion.Drawing.Paper;
using Companion.Drawing.Stills.Charts;
using Companion.Session.AfterShow.Recaps;

namespace Companion.Server.AfterShow;

/// <summary>A recap as a document, for paper and for a page of HTML.</summary>
internal static class RecapPaper
{
    /// <summary>The blocks of the document.</summary>
    /// <param name="words">The recap in words.</param>
    /// <param name="isPrivate">Whether the mistakes stand in it.</param>
    public static ImmutableArray<PaperBlock> Of(RecapWords words, bool isPrivate) =>
    [
        new Paragraph(words.Summary),
        .. words.Recap.Puzzles.SelectMany(puzzle => Puzzle(words, puzzle, isPrivate)),
        .. Section("Talking points", words.Said),
        .. Section("Where the time went", words.Times),
    ];

    private static IEnumerable<PaperBlock> Puzzle(RecapWords words, RecapPuzzle puzzle, bool isPrivate)
    {
        yield return new Heading(RecapWords.TitleOf(puzzle), VideoClock.Of(puzzle.From));
        yield return new FigureWithWords(
            Figure.Of(puzzle.Start, withMarks: false),
            [.. new[] { RecapWords.CreditOf(puzzle), words.CourseOf(puzzle) }.Where(text => text.Length > 0)]);
        foreach (var (title, steps) in words.StepsOf(puzzle))
        {
            yield return new Heading(title);
            yield return new Steps(1, [.. steps.Select(step => new Step(step.Words, step.At, Figure: step.Figure))]);
        }

        foreach (var block in Section("What came true", words.RemarksOf(puzzle))
            .Concat(Section("What viewers found first", RecapWords.FoundFirstOf(puzzle)))
            .Concat(Section("Overlooked", words.OverlookedOf(puzzle)))
            .Concat(isPrivate ? Section("Mistakes and their mending", RecapWords.SlipsOf(puzzle)) : []))
        {
            yield return block;
        }

        yield return new Heading("How much was open");
        yield return new Drawn(ChartOf(puzzle, words.Recap.Length));
    }

    /// <summary>How much was open of a puzzle as time went by.</summary>
    /// <param name="puzzle">The puzzle.</param>
    /// <param name="length">How long the video is.</param>
    public static OpennessChart ChartOf(RecapPuzzle puzzle, TimeSpan length)
    {
        var end = puzzle.SolvedAt ?? length;
        return new(puzzle.Curve, puzzle.Curve.IsEmpty || end > puzzle.Curve[^1].At ? end : puzzle.Curve[^1].At, 1000, 300);
    }

    private static IEnumerable<PaperBlock> Section(string title, ImmutableArray<string> lines) =>
        lines.IsEmpty ? [] : [new Heading(title), new Points(lines)];
}
