using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Tests.Air;

public sealed class SceneTests
{
    private readonly PlayedSession _session = new();

    [Fact]
    public void At_first_the_main_scene_has_a_square_board_in_the_middle_of_a_16_by_9_picture()
    {
        var (name, frame) = Assert.Single(_session.State.Scenes);

        Assert.Equal("main", name);
        Assert.Equal(frame.Width * 16, frame.Height * 9, precision: 9);
        Assert.Equal(0.9, frame.Height, precision: 9);
        Assert.Equal(1, 2 * frame.Left + frame.Width, precision: 9);
        Assert.Equal(1, 2 * frame.Top + frame.Height, precision: 9);
    }

    [Fact]
    public void Scenes_are_made_moved_shown_and_forgotten()
    {
        var (first, second) = (new Frame(0, 0, 0.5, 0.5), new Frame(0.1, 0.1, 0.5, 0.5));

        _session.Do(new PlaceFrame("close up 2", first), new PlaceFrame("close up 2", second), new ShowFrame("close up 2"));
        Assert.Equal(second, _session.State.Scenes["close up 2"]);
        Assert.Equal("close up 2", _session.State.ShownFrame);

        _session.Do(new ForgetScene("close up 2"));
        Assert.Null(_session.State.Scenes["close up 2"]);
        Assert.Null(_session.State.ShownFrame);
    }

    [Fact]
    public void The_main_scene_cannot_be_forgotten() => Assert.Equal(
        "The scene 'main' is always there: place its frame instead.", _session.Refused(new ForgetScene("main")));

    [Fact]
    public void A_scene_that_is_not_there_cannot_be_shown_or_forgotten()
    {
        Assert.Equal("There is no scene 'far': choose one of the list.", _session.Refused(new ShowFrame("far")));
        Assert.Equal("There is no scene 'far': choose one of the list.", _session.Refused(new ForgetScene("far")));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" close")]
    [InlineData("a/b")]
    [InlineData("<b>")]
    [InlineData("12345678901234567890123456789012345678901")]
    public void A_scene_has_a_plain_name(string name) => Assert.Equal(
        "A scene's name has 1 to 40 letters, digits, blanks or hyphens: choose another.",
        _session.Refused(new PlaceFrame(name, new(0, 0, 0.5, 0.5))));

    [Theory]
    [InlineData(-0.01, 0, 0.5, 0.5)]
    [InlineData(0, 0.6, 0.5, 0.5)]
    [InlineData(0, 0, 0.04, 0.5)]
    [InlineData(0, 0, 0.5, 0.04)]
    [InlineData(0, 0, 1.01, 0.5)]
    [InlineData(double.NaN, 0, 0.5, 0.5)]
    [InlineData(0, 0, double.PositiveInfinity, 0.5)]
    public void A_frame_lies_inside_the_picture_and_is_not_too_small(double left, double top, double width, double height) =>
        Assert.Equal(
            "The board lies inside the picture and takes at least 5 % of its width and height: move or enlarge it.",
            _session.Refused(new PlaceFrame("main", new(left, top, width, height))));
}
