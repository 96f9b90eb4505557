using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.AfterShow;
using Companion.Server.Settings;
using Companion.Server.Shows;
using Companion.Session.Chapters;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Shows;

namespace Companion.Server.Tests.AfterShow;

/// <summary>Shows as they are solved by the first deduction of each scan, with times of chance, each digit with its proof.</summary>
internal static class MadeShow
{
    public static readonly Ladder Ladder = LadderFile.Read(null);

    public static readonly Wording Wording = ShippedFiles.Wording(Ladder);

    /// <summary>The demo's puzzle, made by our own generator, seed 2371; it needs an XY-wing.</summary>
    public const string Lanterns = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    private static readonly DateTimeOffset Eight = new(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);

    // What is told of a puzzle does not depend on the times: it is worked out once.
    private static readonly Lazy<ImmutableArray<Deduction>> Way = new(Solve);

    /// <summary>The deductions that lead through the puzzle, in order.</summary>
    public static ImmutableArray<Deduction> Steps => Way.Value;

    /// <summary>A show of chance.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="recorded">Whether a recording is keyed; null leaves it to chance.</param>
    public static StoredShow Of(int seed, bool? recorded = null)
    {
        var random = new Random(seed);
        var (at, pace) = (Eight, random.Next(1, 90));
        var events = new List<Event> { new PuzzleLoaded(at, Lanterns, "Lanterns", "", "") };
        var keys = recorded ?? random.Next(4) > 0 ? random.Next(1, 6) : 0;
        var entry = 0;
        foreach (var step in Way.Value.Take(random.Next(0, Way.Value.Length + 1)))
        {
            at = at.AddSeconds(random.NextDouble() * pace);
            if (keys > 0 && random.Next(12) == 0)
            {
                events.Add(Keyed(events, at));
                keys--;
            }

            if (random.Next(6) == 0)
                events.Add(new DeductionUsed(at, step));
            if (step.Places.IsEmpty)
            {
                foreach (var gone in step.Removes)
                    events.Add(Attributed(events, new StrikeChanged(at, CellSet.Of(gone.Cell), gone.Digit, IsStruck: true), ++entry, step));
            }
            else
            {
                events.Add(Attributed(events, new DigitPlaced(at, step.Places.First().Cell, step.Places.First().Digit), ++entry, step));
            }
        }

        return StoredShow.Replay(events, offset: TimeSpan.FromSeconds(random.Next(-30, 60)));
    }

    /// <summary>The whole puzzle, an entry every ten seconds; nothing was recorded.</summary>
    public static StoredShow Whole()
    {
        var events = new List<Event> { new PuzzleLoaded(Eight, Lanterns, "Lanterns", "A. Setter", "https://example.org/lanterns") };
        foreach (var (step, index) in Way.Value.Select((step, index) => (step, index)))
        {
            var at = Eight.AddSeconds(10 * (index + 1));
            if (step.Places.IsEmpty)
                events.AddRange(step.Removes.Select(gone => new StrikeChanged(at, CellSet.Of(gone.Cell), gone.Digit, IsStruck: true)));
            else
                events.Add(new DigitPlaced(at, step.Places.First().Cell, step.Places.First().Digit));
        }

        return StoredShow.Replay(events);
    }

    public static OpenedShow Opened(StoredShow show, ImmutableArray<ChapterMark>? edited = null) =>
        new(1, show, new(null, show.Offset, edited, [.. show.Events.Select(EventText.Write)]), null);

    public static ShowChapters Chapters(int seed) => ShowChapters.Of(Opened(Of(seed)), Ladder, Wording);

    private static Event Keyed(List<Event> events, DateTimeOffset at) => events.FindLast(each => each is RecordingStarted or RecordingPaused or RecordingResumed) switch
    {
        null => new RecordingStarted(at),
        RecordingPaused => new RecordingResumed(at),
        _ => new RecordingPaused(at),
    };

    // The proof comes some time after its entry, as it does live: it is added when the next one is.
    private static EntryAttributed Attributed(List<Event> events, Event entered, int entry, Deduction step)
    {
        events.Add(entered);
        return new EntryAttributed(entered.At.AddSeconds(2), entry, new Attribution.Proved([step], step.Rule, 1, null));
    }

    private static ImmutableArray<Deduction> Solve()
    {
        var ladder = Ladder.UpTo(new("xy-wing"));
        var board = Puzzle.Parse(Lanterns).Board;
        var steps = ImmutableArray.CreateBuilder<Deduction>();
        while (ladder.Scan(board) is [var step, ..])
        {
            steps.Add(step);
            board = board.Apply(step);
        }

        return steps.ToImmutable();
    }
}
