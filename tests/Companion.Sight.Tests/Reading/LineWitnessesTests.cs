using Companion.Sight.Reading;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Marks with made readings, of which two witnesses say whether a line goes through them.</summary>
public sealed class LineWitnessesTests
{
    private static readonly CellSketch Cell = Sketch();

    [Theory]
    // Both agree.
    [InlineData(true, 0.99f, true, true, false)]
    [InlineData(false, 0.001f, true, false, false)]
    // The network alone is certain.
    [InlineData(false, 0.99f, true, true, true)]
    [InlineData(true, 0.01f, true, false, true)]
    // The network is not: what was compared counts, and somebody has to look where they lean apart.
    [InlineData(true, 0.7f, true, true, false)]
    [InlineData(true, 0.3f, true, true, true)]
    [InlineData(false, 0.7f, true, false, true)]
    // A faint suspicion is one where there are lines on the board.
    [InlineData(false, 0.2f, true, false, true)]
    [InlineData(false, 0.2f, false, false, false)]
    // Where there are none, one of them alone is not believed.
    [InlineData(true, 0.3f, false, false, true)]
    [InlineData(false, 0.99f, false, false, true)]
    [InlineData(true, 0.7f, false, true, false)]
    public void Two_witnesses_settle_where_a_line_is(bool compared, float line, bool boardHasLines, bool isStruck, bool isUnsure)
    {
        var mark = Mark(compared, line);
        List<Sign> marks = [mark];
        if (boardHasLines)
            marks.Add(Mark(true, 0.999f));

        LineWitnesses.Settle(marks);

        Assert.Equal((isStruck, isUnsure), (mark.IsStruck, !mark.IsSure));
    }

    [Fact]
    public void Where_the_network_was_not_asked_what_was_compared_stays()
    {
        var mark = Mark(true, 0);
        mark.Around = default;

        LineWitnesses.Settle([mark]);

        Assert.True(mark is { IsStruck: true, IsSure: true });
    }

    private static Sign Mark(bool compared, float line) => new(Cell.Signs[0].Blob, Cell.Ink)
    {
        Reading = ContextBoard.Sure(4),
        IsStruck = compared,
        Around = new(ContextBoard.Sure(4).Odds, line, 0),
    };

    private static CellSketch Sketch()
    {
        var frame = SketchedBoard.Of(canvas =>
        {
            using var font = SketchedBoard.Font("work-sans", 20);
            using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
            canvas.DrawText("4", SketchedBoard.Margin + 40, SketchedBoard.Margin + 46, SKTextAlign.Center, font, ink);
        });
        return CellSketch.Of(frame, StraightBoard.Of(frame, SketchedBoard.Place).Boxes[0]);
    }
}
