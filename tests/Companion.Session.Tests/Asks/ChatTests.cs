using Companion.Engine.Proofs;
using Companion.Session.Asks;
using Companion.Session.Asks.Answers;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Asks;

/// <summary>In a chat the same question is answered once for all, and nobody is answered too often.</summary>
public sealed class ChatTests
{
    private static readonly AskSettings Calm = new() { DelaySeconds = 0 };

    [Fact]
    public void Those_who_ask_the_same_are_answered_together_by_name()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);

        Assert.Empty(show.Types("ann", "!hint"));
        Assert.Empty(show.Types("bob", "!hint"));
        Assert.Empty(show.Wait(1).Types("cy", "!hint 1"));
        Assert.Equal(["@ann, @bob, @cy: Look at block 1"], show.Wait(0.99).Lines(() => show.Wait(0.01)));
    }

    [Fact]
    public void Many_are_only_counted()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        foreach (var name in new[] { "ann", "bob", "cy", "dee", "eve" })
            show.Types(name, "!left");

        Assert.Equal(
            ["For 5 viewers: Still to place, digit × how many: 1 × 5, 2 × 4, 3 × 5, 4 × 8, 5 × 6, 6 × 5, 7 × 7, 8 × 4, 9 × 5"],
            show.Lines(() => show.Wait(2)));
    }

    [Fact]
    public void All_who_were_answered_together_go_on_from_there()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        show.Types("ann", "!hint");
        show.Types("bob", "!hint");
        show.Wait(30).Types("bob", "!hint");

        Assert.Equal(["@bob: Look for a hidden single"], show.Lines(() => show.Wait(5)));
    }

    [Fact]
    public void The_same_is_not_said_again_too_soon_and_whoever_asks_meanwhile_is_gathered()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        show.Types("ann", "!puzzle");
        show.Wait(2);
        show.Wait(5).Types("bob", "!puzzle");
        show.Wait(5).Types("cy", "!puzzle");

        Assert.Empty(show.Lines(() => show.Wait(9)));
        Assert.Equal(["@bob, @cy: “Title”, by Setter"], show.Lines(() => show.Wait(1)));
    }

    [Fact]
    public void Different_answers_keep_a_distance()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        show.Types("ann", "!left");
        show.Types("bob", "!puzzle");
        show.Types("cy", "!hint");
        show.Wait(20);

        Assert.Equal([2, 4, 6], show.Answers.Select(answer => (answer.At - PlayedSession.Start).TotalSeconds));
    }

    [Fact]
    public void A_viewer_who_asks_again_at_once_is_not_heard()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        show.Types("ann", "!hint");
        show.Types("ann", "!left");
        show.Wait(4).Types("ann", "!left");
        Assert.Single(show.Answers);

        show.Wait(1).Types("ann", "!left");
        show.Wait(2);
        Assert.Equal(2, show.Answers.Count);
    }

    [Fact]
    public void On_a_page_each_viewer_is_answered_alone_and_at_once()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);

        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint", AskedShow.Page));
        Assert.Equal(["@bob: Look at block 1"], show.Types("bob", "!hint", AskedShow.Page));
    }

    [Fact]
    public void Nobody_is_answered_when_asks_are_closed_not_even_who_asked_before()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        show.Types("ann", "!hint");
        show.Do(new LimitAsks(new(Open: false, Grade.Why, QuietOnAir: false)));
        show.Types("bob", "!puzzle");
        Assert.Empty(show.Lines(() => show.Wait(60)));

        show.Do(new LimitAsks(new(Open: true, Grade.Why, QuietOnAir: false)));
        show.Types("ann", "!hint");
        Assert.Equal(["@ann: Look at block 1"], show.Lines(() => show.Wait(3)));
    }

    [Fact]
    public void While_something_is_on_air_as_viewers_see_it_they_are_not_answered_but_their_calls_count()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { QuietOnAir = true, DelaySeconds = 10 }).Wait(10);
        var open = show.Session.Scan().Open[0].Deduction;
        show.Do(new StandBy(open), new NextGrade());

        Assert.NotEmpty(show.Types("ann", "!left"));
        show.Wait(10);
        Assert.Empty(show.Types("ann", "!left"));
        Assert.Empty(show.Types("ann", "!call r2c2 6"));
        Assert.Equal(1, Assert.Single(show.Enquiries.View.Calls).Viewers);

        show.Do(new ClearAir());
        Assert.Empty(show.Wait(9).Types("ann", "!left"));
        Assert.NotEmpty(show.Wait(1).Types("ann", "!left"));
    }

    [Fact]
    public void Our_words_with_something_else_behind_them_are_explained()
    {
        var show = AskedShow.Of(Puzzles.Easy);

        Assert.Equal(["@ann: Write !call r4c7 5 for a 5 in row 4, column 7"], show.Types("ann", "!call it"));
        Assert.Equal(
            ["@ann: Write ?hint, or ?hint 3 for a grade from 1 to 4, or ?hint r4c7 for a cell"],
            AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { Prefix = "?" }).Types("ann", "?hint please"));
    }

    [Fact]
    public void Every_question_that_was_taken_comes_to_an_end()
    {
        var show = AskedShow.Of(Puzzles.Easy, Calm);
        show.Types("ann", "!hint");
        show.Types("bob", "!hint");
        show.Do(new EndShow()).GoOut();

        var answered = Assert.Single(show.Answers).Answered;
        Assert.IsType<Unanswered>(answered.Answer);
        Assert.Equal([AskedShow.IdOf("ann"), AskedShow.IdOf("bob")], answered.Viewers);
        Assert.Empty(show.Lines(() => show.Wait(60)));
        Assert.NotEmpty(show.Lines(() =>
        {
            show.Types("ann", "!hint");
            show.Wait(2);
        }));
    }

    [Fact]
    public void Before_a_puzzle_is_loaded_there_is_nothing_to_say() => Assert.Empty(new AskedShow().Types("ann", "!hint"));

    [Theory]
    [InlineData("ann\r\nQUIT", "@annQUIT: ")]
    [InlineData("\u202Enna", "@nna: ")]
    [InlineData("/me is 5", "@meis5: ")]
    [InlineData("  ", "@viewer: ")]
    [InlineData("a-name-that-goes-on-and-on-and-on", "@a-name-that-goes-on-and-: ")]
    [InlineData("Zoë_21", "@Zoë_21: ")]
    public void A_name_is_made_fit_to_stand_in_a_line(string name, string begins) => Assert.StartsWith(
        begins, AskedShow.Of(Puzzles.Easy).Types(name, "!hint")[0], StringComparison.Ordinal);

    [Fact]
    public void Whoever_has_not_asked_for_longest_is_forgotten_first()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { MostViewers = 10 });
        show.Types("ann", "!hint");
        for (var other = 0; other < 9; other++)
            show.Types($"viewer{other}", "!hint");
        show.Wait(60);
        Assert.Equal(["@ann: Look for a hidden single"], show.Types("ann", "!hint"));

        for (var other = 0; other < 10; other++)
            show.Types($"another{other}", "!hint");
        show.Wait(60);
        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint"));
    }

    [Fact]
    public void When_the_show_has_ended_all_viewers_are_forgotten()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        show.Types("ann", "!hint 4");
        show.Types("ann", "!call r2c2 6");
        show.Do(new EndShow());

        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint"));
        Assert.Empty(show.Enquiries.View.Calls);
    }
}
