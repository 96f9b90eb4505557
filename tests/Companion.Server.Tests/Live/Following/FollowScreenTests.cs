using System.Text.Json;
using Companion.Engine;
using Companion.Server.Access;
using Companion.Session.State;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>From what is read to the session, through the server.</summary>
public sealed class FollowScreenTests
{
    [Fact]
    public async Task A_digit_on_the_screen_is_entered_and_pushed_as_if_it_were_typed_and_its_undo_is_an_undo()
    {
        await using var screen = await FollowedScreen.Start();
        var start = screen.Reader.Reading;
        Assert.Equal("following", (await screen.LookTwice()).GetProperty("status").GetString());

        screen.Reader.Reading = start.With("r1c3", read => Readings.Digit(read.Cell, 4));
        Assert.Equal(50, (await screen.Look()).GetProperty("again").GetInt32());
        Assert.Equal(JsonValueKind.Null, (await screen.Look()).GetProperty("again").ValueKind);
        Assert.Equal("r1c3=4", Grid(screen).Placed.ToString());
        await screen.Panel.Sees("Desk", screen.Companion.Session.State.Sequence);

        screen.Reader.Reading = start;
        await screen.LookTwice();
        Assert.Empty(Grid(screen).Placed);
        Assert.NotNull(screen.Companion.Session.State.History.Next);
    }

    [Fact]
    public async Task Marks_come_as_block_marks_and_lists_by_where_they_stand()
    {
        await using var screen = await FollowedScreen.Start();
        await screen.LookTwice();
        screen.Reader.Reading = screen.Reader.Reading
            .With("r1c3", read => read with { Marks = [Readings.Mark(4, 0.15f, 0.15f)] })
            .With("r2c2", read => read with { Marks = [Readings.Mark(4, 0.15f, 0.15f)] })
            .With("r9c7", read => read with { Marks = [Readings.Mark(2, 0.4f, 0.5f), Readings.Mark(7, 0.6f, 0.5f, isStruck: true)] });
        await screen.LookTwice();

        var grid = Grid(screen);
        Assert.Equal(CellSet.Of(Cell.Parse("r1c3"), Cell.Parse("r2c2")), grid.BlockMarks[Digit.Of(4)]);
        Assert.Equal("r9c7=2 r9c7=7", grid.CellMarks.ToString());
        Assert.Equal("r9c7=7", grid.Struck.ToString());
    }

    [Fact]
    public async Task An_unsure_cell_is_named_and_one_word_of_the_presenter_enters_and_teaches_it()
    {
        await using var screen = await FollowedScreen.Start();
        await screen.LookTwice();
        screen.Reader.Reading = screen.Reader.Reading
            .With("r1c3", read => Readings.Digit(read.Cell, 7, certainty: 0.4f))
            .With("r9c7", read => Readings.Digit(read.Cell, 1, certainty: 0.4f))
            .With("r5c5", read => Readings.Digit(read.Cell, 5, certainty: 0.4f))
            .With("r9c1", read => read with { Certainty = 0.4f, Glyph = Readings.Glyph(0) }); // a sign that is no digit by its look
        var view = await screen.LookTwice();

        Assert.Equal("unsure", view.GetProperty("status").GetString());
        Assert.Equal(
            ["r1c3 is hard to read: 7?", "r5c5 is hard to read: 5?", "r9c1 is hard to read: is there a digit?", "r9c7 is hard to read: 1?"],
            view.GetProperty("held").EnumerateArray().Select(held => held.GetProperty("text").GetString()));
        Assert.Empty(Grid(screen).Placed);

        await screen.Panel.Do("ReadAs", "r1c3", 4);
        await screen.Panel.Do("AcceptReading", "r9c7");
        await screen.Panel.Do("ReadAs", "r5c5", 0);
        await screen.Panel.Do("ReadAs", "r9c1", 3);
        Assert.Empty((await screen.Look()).GetProperty("held").EnumerateArray());
        Assert.Equal("r1c3=4 r9c1=3 r9c7=1", Grid(screen).Placed.ToString());
        Assert.Equal([(Readings.Glyph(7), 4), (Readings.Glyph(1), 1), (Readings.Glyph(0), 3)], screen.Reader.Taught);
    }

    [Fact]
    public async Task Of_a_mark_without_a_glyph_nothing_is_learned()
    {
        await using var screen = await FollowedScreen.Start();
        await screen.LookTwice();
        screen.Reader.Reading = screen.Reader.Reading.With("r1c3", read => read with
        {
            Marks = [Readings.Mark(1, 0.2f, 0.2f), Readings.Mark(2, 0.8f, 0.2f) with { Glyph = GlyphImage.Empty }],
            Certainty = 0.4f,
        });
        await screen.LookTwice();

        await screen.Panel.Do("AcceptReading", "r1c3");

        Assert.Equal([(Readings.Glyph(1), 1)], screen.Reader.Taught);
    }

    [Fact]
    public async Task Another_puzzle_is_loaded_when_the_presenter_says_so()
    {
        await using var screen = await FollowedScreen.Start();
        var other = Session.State.Grid.Of(Puzzle.Parse(Grids.PrologManual), 1, new("", "", ""));
        Assert.Equal("The screen shows no other puzzle now: look at it again.", (await screen.Panel.Ask("LoadFromScreen")).Refusal);

        screen.Reader.Reading = Readings.Of(other);
        var view = await screen.LookTwice();
        Assert.Equal(("otherPuzzle", 17), (view.GetProperty("status").GetString(), view.GetProperty("otherGivens").GetInt32()));
        await screen.Panel.Do("LoadFromScreen");
        Assert.Equal("following", (await screen.LookTwice()).GetProperty("status").GetString());
        Assert.Equal(Grids.PrologManual.Replace('0', '.'), Grid(screen).Puzzle!.Board.ToString());
    }

    [Fact]
    public async Task What_was_entered_by_hand_is_taken_back_only_on_demand()
    {
        await using var screen = await FollowedScreen.Start();
        await screen.LookTwice();
        await screen.Panel.Do("PlaceDigit", "r1c3", 4);
        await screen.LookTwice();
        Assert.Equal("r1c3=4", Grid(screen).Placed.ToString());

        await screen.Panel.Do("TakeScreen");
        Assert.Empty(Grid(screen).Placed);
    }

    [Fact]
    public async Task What_the_rules_of_marks_do_not_allow_is_said_and_the_rest_is_entered()
    {
        await using var screen = await FollowedScreen.Start();
        await screen.LookTwice();
        var reading = screen.Reader.Reading;
        foreach (var cell in new[] { "r7c9", "r8c7", "r8c8", "r9c7" }) // the open cells of the block
            reading = reading.With(cell, read => read with { Marks = [Readings.Mark(4, 0.15f, 0.15f)] });
        screen.Reader.Reading = reading.With("r1c3", read => Readings.Digit(read.Cell, 4));
        var view = await screen.LookTwice();

        Assert.Equal("A block mark has at most 3 places: take one out first, or write candidate lists.", view.GetProperty("refusal").GetString());
        Assert.Equal("r1c3=4", Grid(screen).Placed.ToString());
    }

    [Fact]
    public async Task A_co_host_follows_no_screen()
    {
        await using var screen = await FollowedScreen.Start();
        await using var coHost = await screen.Companion.OpenDesk(AccessRole.CoHost);

        Assert.Equal("Only the presenter may do this: ask the presenter.", (await coHost.Ask("FollowScreen", "mine", true)).Refusal);
        await screen.Look();
    }

    private static Grid Grid(FollowedScreen screen) => screen.Companion.Session.State.Grid;
}
