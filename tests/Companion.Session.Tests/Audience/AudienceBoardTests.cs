using Companion.Engine;
using Companion.Session.Audience;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Audience;

public sealed class AudienceBoardTests
{
    [Fact]
    public void The_board_is_what_the_presenter_wrote()
    {
        var session = PlayedSession.Of(Puzzles.Easy).Do(
            new PlaceDigit(Cell.Parse("r2c2"), Digit.Of(6)),
            new ToggleCellMark(Cells("r1c2"), Digit.Of(8)),
            new ToggleCellMark(Cells("r1c2"), Digit.Of(4)),
            new ToggleBlockMark(Cells("r2c5", "r3c5"), Digit.Of(1)),
            new ToggleStrike(Cells("r1c2"), Digit.Of(8)));

        var board = AudienceBoard.Of(session.State.Grid);

        Assert.Equal(Puzzles.Easy.Replace("\n", "", StringComparison.Ordinal), board.Givens);
        Assert.Equal("..........6" + new string('.', 70), board.Placed);
        Assert.Equal("r1c2:48", board.Lists);
        Assert.Equal("r2c5:1 r3c5:1", board.BlockMarks);
        Assert.Equal("r1c2:8", board.Struck);
    }

    private static CellSet Cells(params string[] names) => CellSet.Of([.. names.Select(Cell.Parse)]);
}
