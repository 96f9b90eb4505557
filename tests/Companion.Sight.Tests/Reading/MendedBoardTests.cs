using Companion.Browser.Tests;
using Companion.Sight.Tests.Boards;

namespace Companion.Sight.Tests.Reading;

/// <summary>Boards that a browser paints and that were once read wrongly, each for another reason.</summary>
public sealed class MendedBoardTests(Chromium chromium)
{
    // Marks that a line of the grid cuts off, compressed hard; bars of a 5 apart from its foot; the corner of a dashed line; low old-style
    // figures among high ones; handwriting hardly higher than the marks; something at the edge of a board without marks; the tip of a
    // pointer on a covered mark, and a pointer that covers one of seven; marks that a frame cuts off; what is left of a ring, taken for a
    // line; low old-style figures on a board with its marks in a row; a mark that was proposed twice in its cell; one at the end of a wide stroke,
    // out of order; a face of which the network hardly reads the 7; lines of which next to nothing shows beside bold strokes; pointers over big
    // digits; handwriting beside high marks; slanting lines of which compression has left little; big digits not much higher than marks.
    [Theory]
    [InlineData(300_096)]
    [InlineData(300_042)]
    [InlineData(300_043)]
    [InlineData(300_171)]
    [InlineData(300_251)]
    [InlineData(300_160)]
    [InlineData(300_179)]
    [InlineData(300_219)]
    [InlineData(300_261)]
    [InlineData(300_076)]
    [InlineData(301_009)]
    [InlineData(600_147)]
    [InlineData(600_087)]
    [InlineData(610_172)]
    [InlineData(600_092)]
    [InlineData(620_167)]
    [InlineData(500_124)]
    [InlineData(610_210)]
    [InlineData(620_022)]
    [InlineData(700_169)]
    public async Task What_can_be_told_is_right_and_what_is_covered_is_held_back(int seed)
    {
        var tally = await ReadAsync(seed);

        Assert.True(tally.Right == 1, string.Join('\n', tally.Failures));
        Assert.Equal(0, tally.Silent);
    }

    // A faint edge of a frame, on a board without marks: it was read as a 1.
    [Fact]
    public async Task What_is_much_fainter_than_all_digits_is_not_entered() => Assert.Equal(0, (await ReadAsync(301_110)).Silent);

    // All marks of a digit with a line through them, so that they were like each other; a lone mark that was entered as a big digit.
    [Theory]
    [InlineData(600_142)]
    [InlineData(600_123)]
    public async Task What_is_wider_than_a_mark_or_lower_than_a_big_digit_is_not_entered(int seed) => Assert.Equal(0, (await ReadAsync(seed)).Silent);

    private async Task<SightTally> ReadAsync(int seed)
    {
        var board = await DrawnBoard.PaintAsync(chromium.Browser, seed);
        var tally = new SightTally();
        tally.Add(board, BoardReader.Read(board.Frame, GridFinder.Find(board.Frame)!, GlyphReader.Standard, Lessons.None));
        return tally;
    }
}
