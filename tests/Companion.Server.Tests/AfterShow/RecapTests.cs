using System.Xml.Linq;
using Companion.Drawing.Paper;
using Companion.Server.AfterShow;
using Companion.Server.Settings;
using Companion.Server.Tests.Paper;
using Companion.Server.Tests.Running;
using Companion.Session.AfterShow.Recaps;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Server.Tests.AfterShow;

public sealed class RecapTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    // Quick rules are enough to see what is open; the whole ladder is slow.
    private static Engine.Rules.Ladder Quick => MadeShow.Ladder.UpTo(new("xy-wing"));

    [Fact]
    public void Every_writer_says_what_the_model_has_and_hostile_words_stay_words()
    {
        var show = AiredShow.Of(3, AiredShow.Hostile);
        var words = Words(show);
        var puzzle = Assert.Single(words.Recap.Puzzles);
        var document = new PaperDocument(words.Title, PaperSize.A4, RecapPaper.Of(words, isPrivate: false));
        var html = PaperHtml.Write(document);
        File.WriteAllBytes(_folder.In("recap.pdf"), PaperPdf.Write(document));
        var (page, printed, markdown) = (
            XDocument.Parse(html["<!DOCTYPE html>\n".Length..]), Poppler.Text(_folder.In("recap.pdf")), RecapMarkdown.Of(words, isPrivate: false).Text);

        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "link" or "iframe");
        Assert.All(page.Descendants("img"), image => Assert.StartsWith("data:image/", image.Attribute("src")!.Value, StringComparison.Ordinal));
        Assert.DoesNotContain("<script", markdown.Replace("\\<", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.NotEmpty(words.Said);
        var facts = words.Times.Concat(words.Said).Concat(words.RemarksOf(puzzle)).Concat(words.OverlookedOf(puzzle)).Append(words.Summary).Append(words.CourseOf(puzzle)).ToList();
        Assert.True(facts.Count > 4);
        foreach (var fact in facts)
        {
            Assert.Contains(page.Descendants(), element => element.Value == fact);
            Assert.Contains(Letters(fact), Letters(printed), StringComparison.Ordinal);
            Assert.Contains(Letters(fact), Letters(markdown.Replace("\\", "", StringComparison.Ordinal)), StringComparison.Ordinal);
        }

        var steps = words.StepsOf(puzzle).SelectMany(list => list.Steps).ToList();
        Assert.All(steps, step => Assert.Contains(Letters(step.Words), Letters(printed), StringComparison.Ordinal));
        Assert.All(steps, step => Assert.Contains(Letters(step.At + step.Words), Letters(markdown), StringComparison.Ordinal));
        Assert.Equal(steps.Count + 1 + 1, page.Descendants("img").Count());
        Assert.Contains(AiredShow.Hostile, page.Root!.Element("body")!.Element("h1")!.Value, StringComparison.Ordinal);
    }

    // The wing was on air twice, the second time with less left to remove, and two pairs that were featured never were.
    [Fact]
    public void What_was_on_air_comes_first_and_what_was_featured_besides_after_it_each_once()
    {
        var show = MadeShow.Whole();
        var (wing, pairs) = (
            MadeShow.Steps.First(step => step.Rule.Value == "xy-wing"),
            MadeShow.Steps.Where(step => step.Rule.Value == "naked-pair").DistinctBy(step => step.PatternCells).Take(2).ToList());
        var single = MadeShow.Steps[0];
        var less = new Engine.Proofs.Deduction { Rule = wing.Rule, Cells = wing.Cells, Digits = wing.Digits, Removes = Engine.CandidateSet.Of(wing.Removes.First()) };
        var at = show.Began;
        Assert.NotEmpty(pairs);
        var told = StoredShow.Replay(show.Events
            .Append(new RulesFeatured(at.AddSeconds(1), new([new(new("naked-pair"))])))
            .Concat(pairs.Select(pair => new DeductionUsed(at.AddSeconds(11), pair)))
            .Concat([
                new PutOnAir(at.AddSeconds(12), single, Engine.Proofs.Grade.Which),
                new PutOnAir(at.AddSeconds(13), wing, Engine.Proofs.Grade.Which),
                new PutOnAir(at.AddSeconds(14), wing, Engine.Proofs.Grade.Why),
                new AirCleared(at.AddSeconds(15)),
                new PutOnAir(at.AddSeconds(16), less, Engine.Proofs.Grade.Why),
            ])
            .OrderBy(happened => happened.At));
        var words = Words(told);

        var lists = words.StepsOf(Assert.Single(words.Recap.Puzzles));

        Assert.Equal(["Put on air", "Featured, not on air"], lists.Select(list => list.Title));
        Assert.Equal(["0:12", "0:13"], lists[0].Steps.Select(step => step.At));
        Assert.Equal(
            [single.Rule, wing.Rule],
            words.Recap.Puzzles[0].OnAir.Select(place => words.Recap.Puzzles[0].Told.Steps[place].Deduction.Rule));
        Assert.Equal(
            pairs.Select(pair => $"Naked pair. {MadeShow.Wording.ToRead(pair)}"),
            lists[1].Steps.Select(step => step.Words));
    }

    [Fact]
    public void Talking_points_that_were_said_are_told_and_others_are_not()
    {
        var show = MadeShow.Whole();
        var at = show.Began;
        var words = Words(StoredShow.Replay(show.Events
            .Concat(new Event[]
            {
                new TextCued(at.AddSeconds(1), 1, "Say who set it."),
                new TextCued(at.AddSeconds(2), 2, "Never said."),
                new TextCued(at.AddSeconds(3), 3, "Marked by mistake."),
                new CueReworded(at.AddSeconds(4), 1, "A. Setter made it, in the lighthouse."),
                new CueTurned(at.AddSeconds(5), 3, CueStage.Done),
                new CueTurned(at.AddSeconds(6), 3, CueStage.Listed),
                new CueTurned(at.AddSeconds(65), 1, CueStage.Done),
                new CuesRemoved(at.AddSeconds(70), new([1])),
            })
            .OrderBy(happened => happened.At)));

        Assert.Equal(["1:05 A. Setter made it, in the lighthouse."], words.Said);
    }

    [Fact]
    public void Mistakes_and_their_mending_are_for_the_presenter_alone()
    {
        var words = Words(AiredShow.WithSlip(out var wrong));
        var slip = Assert.Single(words.Recap.Puzzles[0].Slips);

        Assert.Equal((wrong, false, TimeSpan.FromSeconds(10), TimeSpan.FromSeconds(40)), (slip.Candidate, slip.IsStrike, slip.At, slip.MendedAt!.Value));
        Assert.Contains($"0:10 {wrong.Digit} in {wrong.Cell}: mended after 0:30.", RecapMarkdown.Of(words, isPrivate: true).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("mended", RecapMarkdown.Of(words, isPrivate: false).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "mended",
            PaperHtml.Write(new("Recap", PaperSize.A4, RecapPaper.Of(words, isPrivate: false))),
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_overlooked_was_open_all_the_time_and_easier_than_what_was_worked()
    {
        var show = AiredShow.Of(3);
        var puzzle = Words(show).Recap.Puzzles[0];
        Assert.All(puzzle.Overlooked, each =>
        {
            Assert.True(each.Entries >= 5 && each.To >= each.From);
            Assert.True(Quick.RungOf(each.Harder) > Quick.RungOf(each.Deduction.Rule));
            Assert.Contains(each.Deduction, Quick.Scan(each.Board, TestContext.Current.CancellationToken));
        });
        Assert.Equal(RecapMaker.ScansOf(show), puzzle.Curve.Length);
    }

    // The whole puzzle and, told besides, its XY-wing and a step that was open on the way and that no route takes.
    [Fact]
    public void A_rule_that_was_told_and_that_the_route_does_not_take_is_not_said_to_be_needed()
    {
        var show = MadeShow.Whole();
        var needed = Engine.Planning.Route.From(show.Last.Grid.Puzzle!.Board, MadeShow.Ladder, TestContext.Current.CancellationToken).Rungs
            .Select(rung => rung.Rule.Id).ToHashSet();
        var (moment, detour) = show.Moments
            .SelectMany(moment => Quick.Scan(Session.Boards.KnownBoard.Of(moment.State).Value!, TestContext.Current.CancellationToken)
                .Where(open => !needed.Contains(open.Rule)).Select(open => (moment, open)))
            .First();
        var at = moment.Happened.At.AddSeconds(1);
        var wing = MadeShow.Steps.First(step => step.Rule == new Engine.Proofs.RuleId("xy-wing"));
        var told = StoredShow.Replay(show.Events
            .Append(new DeductionUsed(at, detour))
            .Append(new DeductionUsed(show.Began.AddSeconds(1), wing))
            .OrderBy(happened => happened.At));

        var remarks = Words(told).Recap.Puzzles[0].TrueRemarks.OfType<Engine.Planning.Talking.TalkingPoint.Needs>().Select(needs => needs.Rule).ToList();

        Assert.Contains(new("xy-wing"), remarks);
        Assert.DoesNotContain(detour.Rule, remarks);
    }

    // The whole puzzle, an entry every ten seconds: when the ninth of a digit was there is counted from the entries.
    [Fact]
    public void The_digit_that_was_finished_first_is_told_with_its_time()
    {
        var show = MadeShow.Whole();
        var counts = new int[10];
        foreach (var given in MadeShow.Lanterns.Where(char.IsAsciiDigit))
            counts[given - '0']++;
        var ninth = show.Events.OfType<DigitPlaced>().First(placed => ++counts[placed.Digit.Value] == 9);
        var words = Words(show);
        var first = Assert.Single(words.Recap.Puzzles).FirstDigit;

        Assert.Equal((ninth.At - show.Began, ninth.Digit), first);
        Assert.Equal(
            $"{VideoClock.Of(ninth.At - show.Began)} The first digit to be finished was {ninth.Digit}.", words.RemarksOf(words.Recap.Puzzles[0])[^1]);
    }

    // A pair for 5 seconds between singles is no chapter of its own; what the time went on is told all the same.
    [Fact]
    public void Where_the_time_went_is_told_by_what_was_worked_on_and_adds_up_to_the_show()
    {
        var at = MadeShow.Whole().Began;
        var puzzle = Engine.Puzzle.Parse(MadeShow.Lanterns);
        DeductionUsed Used(DateTimeOffset at, string rule, int open) => new(at, new()
        {
            Rule = new(rule),
            Cells = [new(puzzle.Board.Open.ElementAt(open), Engine.Proofs.Role.Single)],
            Digits = Engine.DigitSet.Parse("1"),
            Places = Engine.CandidateSet.Of(new Engine.Candidate(puzzle.Board.Open.ElementAt(open), puzzle.Solution[puzzle.Board.Open.ElementAt(open)])),
        });
        var words = Words(StoredShow.Replay(
        [
            new PuzzleLoaded(at, MadeShow.Lanterns, "Lanterns", "", ""),
            Used(at.AddSeconds(60), "naked-single", 0),
            Used(at.AddSeconds(120), "naked-pair", 25),
            Used(at.AddSeconds(126), "naked-single", 50),
            new MarksSettled(at.AddSeconds(186)),
        ]));

        Assert.Equal([TimeSpan.FromSeconds(60), TimeSpan.FromSeconds(60), TimeSpan.FromSeconds(6), TimeSpan.FromSeconds(60)], words.Recap.Topics.Select(each => each.Length));
        Assert.Equal(3, words.Recap.Chapters.Length);
        Assert.Contains(words.Times, line => line.StartsWith("2:00 Naked pair", StringComparison.Ordinal) && line.EndsWith(": 0.1 min", StringComparison.Ordinal));
        Assert.Contains("1.0 min", Assert.Single(words.Times, line => line.Contains("Lanterns", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_in_the_way_is_said_to_have_been_so_until_it_was_taken_away()
    {
        var words = Words(AiredShow.Of(3));
        var puzzle = words.Recap.Puzzles[0];
        var (x, board) = (Engine.CandidateSet.Parse("r5c3=3"), puzzle.Start);
        var (pair, wing) = (new Engine.Proofs.RuleId("naked-pair"), new Engine.Proofs.RuleId("xy-wing"));
        var ladder = MadeShow.Ladder;
        Engine.Planning.PlannedStep Step(Engine.Proofs.RuleId rule, Engine.CandidateSet removes) =>
            new(board, ladder[rule], new() { Rule = rule, Cells = [], Digits = Engine.DigitSet.Parse("3"), Removes = removes }, IsFeatured: false) { Ways = 0 };
        string Said(Engine.CandidateSet removes, int earlier) => Assert.Single(words.RemarksOf(puzzle with
        {
            Told = new(ladder, board, [Step(pair, Engine.CandidateSet.Empty), Step(pair, removes), Step(wing, Engine.CandidateSet.Empty)], board, []),
            ToldAt = [TimeSpan.FromSeconds(60), TimeSpan.FromSeconds(93), TimeSpan.FromSeconds(120)],
            TrueRemarks = [new Engine.Planning.Talking.TalkingPoint.OneInTheWay(2, x.First(), earlier)],
            FirstDigit = null,
        }));

        Assert.EndsWith("Until 1:33, when the naked pair took it away, only 3 in r5c3 was in the way of the XY-wing.", Said(x, 1), StringComparison.Ordinal);
        Assert.EndsWith("At 1:33 only 3 in r5c3 was in the way of the XY-wing.", Said(Engine.CandidateSet.Empty, 1), StringComparison.Ordinal);
        Assert.EndsWith("From 1:00 to 1:33 only 3 in r5c3 was in the way of the XY-wing.", Said(Engine.CandidateSet.Empty, 0), StringComparison.Ordinal);
    }

    // The step before the pattern's own, here the sixth, took away what was in its way.
    [Theory]
    [InlineData(5, "Until the step before it only r5c3=3 was in its way.")]
    [InlineData(2, "For 4 steps before it only r5c3=3 was in its way.")]
    public void On_a_route_it_is_said_by_steps(int earlier, string said)
    {
        var point = new Engine.Planning.Talking.TalkingPoint.OneInTheWay(6, Engine.CandidateSet.Parse("r5c3=3").First(), earlier);

        Assert.Equal(said, Planning.PointText.Of(point, MadeShow.Wording, ShippedFiles.Rarity()));
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => RecapMaker.Of(AiredShow.Of(2), [], Quick, null, stop.Token));
    }

    public void Dispose() => _folder.Dispose();

    private static RecapWords Words(StoredShow show) => new(
        RecapMaker.Of(
            show,
            ShowChapters.Of(MadeShow.Opened(show), MadeShow.Ladder, MadeShow.Wording).Chapters,
            Quick,
            cancel: TestContext.Current.CancellationToken),
        MadeShow.Wording,
        ShippedFiles.Rarity());

    // Lines are broken and signs set by each in its own way.
    private static string Letters(string text) => string.Concat(text.Where(char.IsLetterOrDigit));
}
