using Companion.Session.Commands;
using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class AirOutdatedTests
{
    private const string HiddenSingle6 = "hidden-single 6 single r2c2 in b1 places r2c2=6";
    private const string Pointing8 = "pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_placement_on_air_is_outdated_once_it_is_made()
    {
        Show(HiddenSingle6);
        Assert.Empty(_session.Texts(WatchKind.AirOutdated));

        var note = _session.Place("r2c2", 6).Note(WatchKind.AirOutdated);
        Assert.Equal("What is on air has been carried out: clear it.", note.Text);
        Assert.Equal("r2c2", note.Cells());
    }

    [Fact]
    public void A_removal_on_air_is_outdated_once_viewers_see_all_of_it()
    {
        Show(Pointing8);
        _session.Do(new NextGrade(), new NextGrade(), new NextGrade());
        Assert.Empty(_session.Strike("r1c8", 8).Texts(WatchKind.AirOutdated));

        Assert.Equal(["What is on air has been carried out: clear it."], _session.Strike("r2c8", 8).Texts(WatchKind.AirOutdated));
    }

    [Fact]
    public void What_is_on_air_is_outdated_once_a_cell_of_its_pattern_is_filled()
    {
        Show("naked-pair 47 subset r2c3 r2c5 in r2 removes r2c2=4 r2c2=7 r2c7=7 r2c8=7");

        Assert.Equal(["What is on air has been passed: clear it."], _session.Place("r2c5", 4).Texts(WatchKind.AirOutdated));
    }

    [Fact]
    public void What_is_on_air_no_longer_holds_once_its_support_is_taken_back()
    {
        _session.Strike("r1c8", 8);
        Show("pointing 8 locked r2c7 r2c8 in b3 removes r2c2=8");

        Assert.Equal(
            ["What is on air no longer holds on this board: clear it."], _session.Strike("r1c8", 8).Texts(WatchKind.AirOutdated));
    }

    [Fact]
    public void What_stands_by_is_watched_too()
    {
        _session.Do(new StandBy(_session.Scan().Named(_session.State, HiddenSingle6)!)).Place("r2c2", 6);

        Assert.Equal(["What stands by has been carried out: choose another."], _session.Texts(WatchKind.AirOutdated));
    }

    private void Show(string id) => _session.Do(new StandBy(_session.Scan().Named(_session.State, id)!), new NextGrade());
}
