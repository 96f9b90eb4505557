using Companion.Engine;
using Companion.Session.Asks.Calls;
using Companion.Session.Commands;
using Companion.Session.State;
using Companion.Session.Tests.Asks;
using Companion.Session.Tests.Views;
using Companion.Session.Views;

namespace Companion.Session.Tests.Air;

/// <summary>Which cells viewers call is shown on air when it is asked for, and never what they call there.</summary>
public sealed class CalledCellTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void They_stand_by_go_on_air_and_are_cleared_as_all_else()
    {
        _session.Do(Calling(("r2c2", 3, 3), ("r9c2", 1, 0)));
        Assert.Equal("r2c2 2+, r9c2 1", Drawn(_session.State.CalledStandby));
        Assert.Equal("", OnAir());

        _session.Do(new NextGrade());
        Assert.Equal("r2c2 2+, r9c2 1", OnAir());
        Assert.Equal("", Drawn(_session.State.CalledStandby));

        _session.Do(new ClearAir());
        Assert.Equal("", OnAir());
    }

    [Fact]
    public void What_is_on_air_stays_as_it_was_when_it_stood_by()
    {
        _session.Do(Calling(("r2c2", 1, 0)), new NextGrade(), Calling(("r2c2", 30, 0)));
        Assert.Equal("r2c2 1", OnAir());

        _session.Do(new NextGrade());
        Assert.Equal("r2c2 25+", OnAir());
    }

    [Fact]
    public void A_deduction_and_called_cells_take_each_others_place()
    {
        var deduction = _session.Scan().Open[0].Deduction;
        _session.Do(new StandBy(deduction), new NextGrade(), Calling(("r2c2", 1, 0)));
        Assert.Null(_session.State.Standby);
        Assert.NotNull(_session.State.OnAir);

        _session.Do(new NextGrade());
        Assert.Null(_session.State.OnAir);

        _session.Do(new StandBy(deduction));
        Assert.Equal("r2c2 1", OnAir());

        _session.Do(new NextGrade());
        Assert.Equal("", OnAir());
        Assert.NotNull(_session.State.OnAir);
    }

    [Fact]
    public void They_go_one_step_back_and_stand_down_as_a_deduction_does()
    {
        _session.Do(Calling(("r2c2", 1, 0)), new StandDown());
        Assert.Equal("Nothing stands by: choose a deduction first.", _session.Refused(new NextGrade()));

        _session.Do(Calling(("r2c2", 1, 0)), new NextGrade(), new PreviousGrade());
        Assert.Equal("", OnAir());
    }

    [Fact]
    public void They_go_with_the_puzzle_and_with_the_show()
    {
        _session.Do(Calling(("r2c2", 1, 0)), new NextGrade(), Calling(("r2c2", 1, 0)), new EndShow());
        Assert.Equal(("", ""), (OnAir(), Drawn(_session.State.CalledStandby)));

        _session.Do(Calling(("r2c2", 1, 0)), new NextGrade(), new LoadPuzzle(Puzzles.Hard, "", "", ""));
        Assert.Equal("", OnAir());
    }

    [Fact]
    public void Filled_cells_are_left_out_and_where_no_other_is_called_there_is_nothing_to_show()
    {
        _session.Place("r2c2", 6).Do(Calling(("r2c2", 5, 5), ("r9c2", 2, 0)));
        Assert.Equal("r9c2 2+", Drawn(_session.State.CalledStandby));

        Assert.Equal("No viewer has called an open cell yet: there is nothing to show.", _session.Refused(Calling(("r2c2", 5, 5))));
        Assert.Equal("No viewer has called an open cell yet: there is nothing to show.", _session.Refused(Calling()));
    }

    [Theory]
    [InlineData(1, "1")]
    [InlineData(2, "2+")]
    [InlineData(4, "2+")]
    [InlineData(5, "5+")]
    [InlineData(9, "5+")]
    [InlineData(99, "50+")]
    [InlineData(999, "500+")]
    [InlineData(20_000, "1k+")]
    public void Numbers_are_shown_in_bands(int viewers, string shown) => Assert.Equal(shown, CallBands.NameOf(CallBands.Of(viewers)));

    // The same viewers call the same cells, once with random digits and once with all the right ones: nobody can tell from what is on air.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Nothing_on_air_depends_on_what_was_called_or_whether_it_is_right(int seed)
    {
        var random = new Random(seed);
        var (guessing, knowing) = (AskedShow.Of(Puzzles.Easy), AskedShow.Of(Puzzles.Easy));
        var solution = guessing.Session.State.Grid.Puzzle!.Solution;
        for (var call = 0; call < 200; call++)
        {
            var (viewer, cell) = ($"viewer{random.Next(60)}", Cell.At(random.Next(Cell.Count)));
            guessing.Types(viewer, $"!call {cell} {random.Next(1, 10)}");
            knowing.Types(viewer, $"!call {cell} {solution[cell]}");
        }

        var shows = new[] { guessing, knowing }.Select(show =>
        {
            show.Do(new StandByCalls(show.Enquiries.View.Calls), new NextGrade());
            return PlainJson.Of(PublicViews.Overlay(show.Session.State, Scenes.Main, ShippedVoice.Voice))
                + PlainJson.Of(PublicViews.Stage(show.Session.State, ShippedVoice.Voice));
        }).ToList();

        Assert.NotEqual(guessing.Enquiries.View.Calls, knowing.Enquiries.View.Calls);
        Assert.Contains("\"AtLeast\"", shows[0], StringComparison.Ordinal);
        Assert.Equal(shows[0], shows[1]);
    }

    private string OnAir()
    {
        var overlay = Drawn(PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).Called);
        Assert.Equal(overlay, Drawn(PublicViews.Stage(_session.State, ShippedVoice.Voice).Called));
        return overlay;
    }

    private static StandByCalls Calling(params (string Cell, int Viewers, int Right)[] calls) => new(
        new([.. calls.Select(call => new CellCalls(Cell.Parse(call.Cell), call.Viewers, call.Viewers, call.Right, null, null))]));

    private static string Drawn(ValueArray<CalledCell> cells) =>
        string.Join(", ", cells.Select(called => $"{called.Cell} {CallBands.NameOf(called.AtLeast)}"));
}
