using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.AfterShow;
using Companion.Session.Chapters;
using Companion.Session.Events;
using Companion.Session.Shows;
using CsCheck;

namespace Companion.Server.Tests.AfterShow;

public sealed class ChapterTests
{
    [Fact]
    public void Chapters_of_a_thousand_shows_begin_at_zero_ascend_and_are_never_shorter_than_ten_seconds()
    {
        var (lengthy, enough) = (0, 0);
        Gen.Int[0, 100_000].Sample(
            seed =>
            {
                var chapters = ShowChapters.Of(MadeShow.Opened(MadeShow.Of(seed)), MadeShow.Ladder, MadeShow.Wording);
                var all = chapters.Chapters;

                Assert.Equal(TimeSpan.Zero, all[0].At);
                Assert.InRange(all.Length, 1, 20);
                Assert.All(all, chapter => Assert.InRange(chapter.Title.Length, 1, ChapterRules.LongestTitle));
                Assert.Equal(all.OrderBy(chapter => chapter.At).Select(chapter => chapter.At).Distinct(), all.Select(chapter => chapter.At));
                Assert.Equal(all, Outline.ForSites(all, chapters.Length));
                if (all.Length >= ChapterRules.Fewest)
                    Assert.Empty(ChapterRules.Broken(all, chapters.Length));
                lengthy += chapters.Length > TimeSpan.FromMinutes(5) ? 1 : 0;
                enough += chapters.Length > TimeSpan.FromMinutes(5) && all.Length >= ChapterRules.Fewest ? 1 : 0;
            },
            iter: 1000,
            threads: 1);

        // A show that ended soon after it began to be told may have fewer.
        Assert.InRange(lengthy, 200, 1000);
        Assert.InRange((double)enough / lengthy, 0.9, 1);
    }

    // Each strike is proved by what is left of the pair: to viewers it is one pair all the time.
    [Fact]
    public void A_pattern_whose_removals_are_entered_one_by_one_is_told_once()
    {
        var pair = MadeShow.Steps.First(step => step.Rule.Value == "naked-pair" && step.Removes.Count > 1);
        var loaded = MadeShow.Whole().Events[0];
        var events = new List<Event> { loaded, new PutOnAir(loaded.At.AddSeconds(60), pair, Grade.Why) };
        foreach (var (gone, index) in pair.Removes.Select((gone, index) => (gone, index)))
        {
            var at = loaded.At.AddSeconds(70 + 5 * index);
            var left = new Deduction { Rule = pair.Rule, Cells = pair.Cells, Digits = pair.Digits, Removes = CandidateSet.Of([.. pair.Removes.Skip(index)]) };
            events.Add(new StrikeChanged(at, CellSet.Of(gone.Cell), gone.Digit, IsStruck: true));
            events.Add(new EntryAttributed(at.AddSeconds(1), index + 1, new Attribution.Proved([left], pair.Rule, 1, null)));
        }

        events.Add(new MarksSettled(loaded.At.AddSeconds(180)));

        var told = Assert.Single(Topics.Of(StoredShow.Replay(events), MadeShow.Ladder).OfType<Topic.Told>());

        Assert.Equal([pair], told.Steps);
        Assert.DoesNotContain("times", ChapterTitle.Of(told, MadeShow.Wording), StringComparison.Ordinal);
    }

    [Fact]
    public void Edited_chapters_come_back_where_they_were_put_and_move_with_the_offset() => Gen.Int[0, 100_000].Sample(
        seed =>
        {
            var show = MadeShow.Of(seed);
            var made = ShowChapters.Of(MadeShow.Opened(show), MadeShow.Ladder, MadeShow.Wording).Chapters;
            var kept = ShowChapters.ToKeep(made, show);

            Assert.Equal(made, Outline.InVideo(show, kept));
            var later = StoredShow.Replay(show.Events, offset: show.Offset + TimeSpan.FromSeconds(7));
            Assert.Equal(
                made.Skip(1).Select(chapter => chapter.At + TimeSpan.FromSeconds(7)),
                Outline.InVideo(later, kept).Skip(1).Select(chapter => chapter.At));
        },
        iter: 300,
        threads: 1);

    [Fact]
    public void Titles_say_in_plain_words_what_was_told()
    {
        Assert.Equal("Pointing 1s in block 8", TitleOf(new() { Rule = new("pointing"), Cells = [], Digits = DigitSet.Parse("1"), Houses = HouseSet.Of(House.Block(8)) }));
        Assert.Equal("XY-wing, pivot r5c5", TitleOf(new()
        {
            Rule = new("xy-wing"),
            Cells = [new(Cell.Parse("r5c5"), Role.Pivot), new(Cell.Parse("r5c8"), Role.Pincer), new(Cell.Parse("r8c5"), Role.Pincer)],
            Digits = DigitSet.Parse("123"),
        }));
        Assert.Equal("Naked pair in row 4", TitleOf(new() { Rule = new("naked-pair"), Cells = [], Digits = DigitSet.Parse("37"), Houses = HouseSet.Of(House.Row(4)) }));
        Assert.Equal("X-wing on 5s", TitleOf(new() { Rule = new("x-wing"), Cells = [], Digits = DigitSet.Parse("5"), Houses = HouseSet.Of(House.Row(1)) | HouseSet.Of(House.Row(2)) }));
        Assert.Equal(
            "Singles in the left stack",
            ChapterTitle.Of(new Topic.Told(TimeSpan.Zero, new(0, 3, new Theme.InChute(Chute.At(3))), [], 1), MadeShow.Wording));
        Assert.Equal("Lanterns", ChapterTitle.Of(new Topic.Loaded(TimeSpan.Zero, "Lanterns"), MadeShow.Wording));
    }

    [Fact]
    public void An_entry_is_told_of_when_it_was_made_and_not_when_its_proof_came()
    {
        var show = MadeShow.Of(7, recorded: false);
        var first = show.Moments.First(moment => moment.Happened is DigitPlaced or StrikeChanged or DeductionUsed);

        Assert.Equal(first.Elapsed, Topics.Of(show, MadeShow.Ladder).OfType<Topic.Told>().First().At);
    }

    [Fact]
    public void Of_two_that_are_merged_the_worthier_gives_the_title()
    {
        var at = new DateTimeOffset(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);
        var wing = new Deduction { Rule = new("xy-wing"), Cells = [new(Cell.Parse("r5c5"), Role.Pivot)], Digits = DigitSet.Parse("123") };
        var single = new Deduction { Rule = new("naked-single"), Cells = [], Digits = DigitSet.Parse("1"), Places = CandidateSet.Parse("r1c1=1") };
        var show = StoredShow.Replay(
        [
            new PuzzleLoaded(at, MadeShow.Lanterns, "Lanterns", "", ""),
            new DeductionUsed(at.AddSeconds(300), single),
            new DeductionUsed(at.AddSeconds(303), wing),
            new MarksSettled(at.AddSeconds(400)),
        ]);

        var chapters = Outline.Of(show, Topics.Of(show, MadeShow.Ladder), topic => ChapterTitle.Of(topic, MadeShow.Wording));

        Assert.Equal([new(TimeSpan.Zero, "Lanterns"), new(TimeSpan.FromSeconds(303), "XY-wing, pivot r5c5")], chapters);
    }

    // Singles for 55 seconds, a pair for 20, and singles again; and the same with the singles before the pair on air.
    [Fact]
    public void A_chapter_begins_with_what_it_names()
    {
        var at = new DateTimeOffset(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);
        static Deduction Single(string cell) => new() { Rule = new("naked-single"), Cells = [new(Cell.Parse(cell), Role.Single)], Digits = DigitSet.Parse("1"), Places = CandidateSet.Parse($"{cell}=1") };
        static Deduction Pair(int row) => new()
        {
            Rule = new("naked-pair"),
            Cells = [new(Cell.Of(row, 1), Role.Subset), new(Cell.Of(row, 2), Role.Subset)],
            Digits = DigitSet.Parse("37"),
            Houses = HouseSet.Of(House.Row(row)),
        };
        ImmutableArray<Event> events =
        [
            new PuzzleLoaded(at, MadeShow.Lanterns, "Lanterns", "", ""),
            new DeductionUsed(at.AddSeconds(38), Single("r1c3")),
            new DeductionUsed(at.AddSeconds(93), Pair(4)),
            new DeductionUsed(at.AddSeconds(113), Single("r9c8")),
            new MarksSettled(at.AddSeconds(200)),
        ];

        var chapters = ChaptersOf(events);
        Assert.Equal([0, 38, 93], chapters.Select(chapter => chapter.At.TotalSeconds));
        Assert.Equal("Naked pair in row 4", chapters[2].Title);

        // On air for 20 seconds, a single is worth more than a pair that was only used.
        chapters = ChaptersOf(events
            .SetItem(3, new PutOnAir(at.AddSeconds(113), Single("r9c8"), Grade.Why))
            .Insert(4, new DeductionUsed(at.AddSeconds(133), Pair(5))));
        Assert.Equal([0, 38, 113], chapters.Select(chapter => chapter.At.TotalSeconds));
        Assert.DoesNotContain("pair", chapters[2].Title, StringComparison.OrdinalIgnoreCase);

        static ImmutableArray<ChapterMark> ChaptersOf(ImmutableArray<Event> events) => StoredShow.Replay(events) is var show
            ? Outline.Of(show, Topics.Of(show, MadeShow.Ladder), topic => ChapterTitle.Of(topic, MadeShow.Wording))
            : [];
    }

    [Fact]
    public void What_a_list_breaks_is_said()
    {
        ImmutableArray<ChapterMark> marks = [new(TimeSpan.FromSeconds(1), "A"), new(TimeSpan.FromSeconds(5), "B")];

        var broken = ChapterRules.Broken(marks, TimeSpan.FromSeconds(60));

        Assert.Equal(3, broken.Length);
        Assert.Contains("fewer than 3", broken[0], StringComparison.Ordinal);
        Assert.Contains("0:00", broken[1], StringComparison.Ordinal);
        Assert.Contains("Chapter 1, A, is shorter than 10 seconds", broken[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("101")]
    public void Titles_that_are_none_are_refused(string title)
    {
        var asked = title == "101" ? new string('a', 101) : title;

        Assert.Contains("1 to 100 characters", Assert.Throws<PlainException>(() => ShowChapters.ToKeep([new(TimeSpan.Zero, asked)], MadeShow.Of(1))).Message, StringComparison.Ordinal);
        Assert.Contains("within the video", Assert.Throws<PlainException>(() => ShowChapters.ToKeep([new(TimeSpan.FromSeconds(-1), "A")], MadeShow.Of(1))).Message, StringComparison.Ordinal);
        Assert.Contains("1 to 100 chapters", Assert.Throws<PlainException>(() => ShowChapters.ToKeep([], MadeShow.Of(1))).Message, StringComparison.Ordinal);
    }

    private static string TitleOf(Deduction step) =>
        ChapterTitle.Of(new Topic.Told(TimeSpan.Zero, new(0, 1, new Theme.OfRule(step.Rule)), [step], 1), MadeShow.Wording);
}
