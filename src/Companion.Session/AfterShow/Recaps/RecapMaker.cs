using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Chapters;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>Makes a recap of a show. Pure; each moment of it is scanned anew, on all cores.</summary>
public static class RecapMaker
{
    // Where nothing was on air or featured, so many of the hardest steps told stand for the show.
    private const int Hardest = 3;

    /// <summary>Makes it.</summary>
    /// <param name="show">The show.</param>
    /// <param name="chapters">Its chapters, by their times in the video.</param>
    /// <param name="ladder">The whole ladder; what the presenter cut from it was not looked for.</param>
    /// <param name="progress">Told how many moments were scanned; from any thread.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Recap Of(
        StoredShow show, ImmutableArray<ChapterMark> chapters, Ladder ladder, IProgress<long>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(show);
        var scanned = 0L;
        return new(
            show.Title,
            show.VideoLength,
            chapters,
            Times(show, ladder),
            Said(show),
            [.. ShowPuzzles.Of(show).Select(moments => Puzzle(show, moments, ladder, Scanned, cancel))]);

        void Scanned() => progress?.Report(Interlocked.Increment(ref scanned));
    }

    /// <summary>How many moments are scanned for it.</summary>
    /// <param name="show">The show.</param>
    public static int ScansOf(StoredShow show) => ShowPuzzles.Of(show).Sum(moments => ScannedShow.Distinct(moments).Count);

    // Chapters are merged so that viewers find a place, and may be edited: what the time went on is told by the topics.
    private static ImmutableArray<(Topic, TimeSpan, TimeSpan)> Times(StoredShow show, Ladder ladder)
    {
        var topics = Topics.Of(show, ladder);
        ImmutableArray<TimeSpan> begins = [.. topics.Select(topic => InVideo(topic.At)), show.VideoLength];
        return [.. topics.Select((topic, place) => (topic, begins[place], begins[place + 1] - begins[place])).Where(each => each.Item3 > TimeSpan.Zero)];

        TimeSpan InVideo(TimeSpan keyed) =>
            TimeSpan.FromTicks(Math.Clamp((topics[0].At == keyed ? TimeSpan.Zero : keyed + show.Offset).Ticks, 0, show.VideoLength.Ticks));
    }

    private static RecapPuzzle Puzzle(StoredShow show, ImmutableArray<Moment> moments, Ladder ladder, Action scanned, CancellationToken cancel)
    {
        var grid = moments[0].State.Grid;
        var puzzle = grid.Puzzle!;
        var whole = ladder.AtFirst;
        var route = Route.From(puzzle.Board, whole, cancel);
        var scans = ScannedShow.Of(moments, ladder, scanned, cancel);
        var told = ToldSteps.Of(show, moments, ladder);
        var plan = new RunPlan(ladder, puzzle.Board, [.. told.Select(step => step.Step)], puzzle.Board, []);
        var onAir = OnceEach(plan, Enumerable.Range(0, told.Length).Where(place => told[place].WasOnAir));
        var solved = moments.FirstOrDefault(moment => moment.State.Grid is { Puzzle: { Solution: var solution } } full
            && full.Filled.Count == 81 && full.Placed.All(solution.Holds));
        return new(
            grid.Credit,
            puzzle.Board,
            VideoTime.Near(show, moments[0]),
            solved is null ? null : VideoTime.Near(show, solved),
            moments[^1].State.Entries - moments[0].State.Entries,
            PuzzleGrade.Of(route))
        {
            Told = plan,
            ToldAt = [.. told.Select(step => step.At)],
            OnAir = onAir,
            Featured = FeaturedOf(plan, onAir),
            TrueRemarks = [.. TalkingPoints.Of(plan).Where(point => point is not TalkingPoint.Needs needs || IsNeeded(needs.Rule))],
            Overlooked = OverlookedFinder.Of(show, moments, scans, ladder),
            Slips = Slips.Of(show, moments),
            Curve = [.. Openness.Of(show, scans)],
            FirstDigit = FirstDigit(show, moments),
            FoundFirst = FoundFirst(show, moments),
            CalledFirst = CalledFirst(moments),
        };

        // A show tells what it likes, where a route takes the easiest that leads on: what the puzzle needs is known of its route alone.
        bool IsNeeded(RuleId rule) => route.Rungs.Any(rung => rung.Rule.Id == rule);
    }

    private static ImmutableArray<int> FeaturedOf(RunPlan plan, ImmutableArray<int> onAir)
    {
        var places = OnceEach(plan, onAir.Concat(Enumerable.Range(0, plan.Steps.Length).Where(place => plan.Steps[place].IsFeatured)));
        return places.Length > 0
            ? [.. places.Except(onAir)]
            : [.. Enumerable.Range(0, plan.Steps.Length).OrderByDescending(place => plan.Steps[place].Rung.Place).Take(Hardest).Order()];
    }

    // The same pattern is another deduction once some of what it removes is gone.
    private static ImmutableArray<int> OnceEach(RunPlan plan, IEnumerable<int> places) =>
        [.. places.DistinctBy(place => plan.Steps[place].Deduction.PatternKey)];

    private static ImmutableArray<(TimeSpan, string)> Said(StoredShow show)
    {
        var said = new Dictionary<int, (TimeSpan At, string Text)>();
        foreach (var moment in show.Moments)
        {
            if (moment.Happened is not CueTurned turned)
                continue;
            said.Remove(turned.Id);
            if (turned.Stage == CueStage.Done && moment.State.Cues[turned.Id] is TextCallOut { Text: var text })
                said[turned.Id] = (VideoTime.Near(show, moment), text);
        }

        return [.. said.Values.OrderBy(each => each.At)];
    }

    private static (TimeSpan, Digit)? FirstDigit(StoredShow show, ImmutableArray<Moment> moments)
    {
        var first = moments.FirstOrDefault(moment => Finished(moment.State.Grid).Any());
        return first is null || first == moments[0] ? null : (VideoTime.Near(show, first), Finished(first.State.Grid).First());
    }

    private static IEnumerable<Digit> Finished(Grid grid) =>
        Digit.All.Where(digit => CellSet.All.Count(cell => grid.DigitAt(cell) == digit && grid.Puzzle!.Solution[cell] == digit) == 9);

    private static ImmutableArray<(TimeSpan, CalledCell)> FoundFirst(StoredShow show, ImmutableArray<Moment> moments)
    {
        var (placed, found) = (new Dictionary<Cell, TimeSpan>(), ImmutableArray.CreateBuilder<(TimeSpan, CalledCell)>());
        foreach (var moment in moments)
        {
            if (moment.Happened is DigitPlaced entered && moment.State.Grid.Puzzle!.Solution[entered.Cell] == entered.Digit)
                placed.TryAdd(entered.Cell, VideoTime.Near(show, moment));
            if (moment.Happened is CellsFoundFirst first)
                found.AddRange(first.Cells.Select(cell => (placed.GetValueOrDefault(cell.Cell, VideoTime.Near(show, moment)), cell)));
        }

        return found.ToImmutable();
    }

    private static int CalledFirst(IEnumerable<Moment> moments)
    {
        var (called, first) = (new HashSet<Cell>(), new HashSet<Cell>());
        foreach (var moment in moments)
        {
            if (moment.Happened is CallsPutOnAir calls)
                called.UnionWith(calls.Cells.Select(cell => cell.Cell));
            else if (moment.Happened is DigitPlaced placed && called.Contains(placed.Cell))
                first.Add(placed.Cell);
        }

        return first.Count;
    }
}
