using Companion.Browser.Tests;
using Companion.Sight.Tests.Boards;

namespace Companion.Sight.Tests.Reading;

/// <summary>Boards that a browser paints and that were once read wrongly, each for another reason.</summary>
public sealed class MendedBoardTests(Chromium chromium)
{
    // Marks that a line of the grid cuts off, compressed hard; bars of a 5 apart from its foot; the corner of a dashed line; low old-style
    // figures among high ones; handwriting hardly higher than the marks; something at the edge of a board without marks; the tip of a
    // pointer on a covered mark, and a pointer that covers one of seven.
    [Theory]
    [InlineData(300_096)]
    [InlineData(300_042)]
    [InlineData(300_043)]
    [InlineData(300_171)]
    [InlineData(300_251)]
    [InlineData(300_160)]
    [InlineData(300_179)]
    [InlineData(300_219)]
    public async Task What_can_be_told_is_right_and_what_is_covered_is_held_back(int seed)
    {
        var board = await DrawnBoard.PaintAsync(chromium.Browser, seed);
        var tally = new SightTally();
        tally.Add(board, BoardReader.Read(board.Frame, GridFinder.Find(board.Frame)!, GlyphReader.Standard, Lessons.None));

        Assert.True(tally.Right == 1, string.Join('\n', tally.Failures));
        Assert.Equal(0, tally.Silent);
    }
}
