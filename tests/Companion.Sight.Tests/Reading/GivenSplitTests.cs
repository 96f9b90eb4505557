using Companion.Engine;
using Companion.Engine.Search;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>A puzzle of our own in a faint colour, and as many digits of its solution entered in black: by their looks, those are the givens.</summary>
public sealed class GivenSplitTests
{
    [Theory]
    [InlineData(3UL)]
    [InlineData(4UL)]
    public void Digits_that_leave_one_solution_are_the_givens_however_they_look(ulong seed)
    {
        var puzzle = Generator.Make(seed);
        var given = puzzle.Board.Givens;
        // Enough of them, but most stand in the upper rows: they leave many solutions.
        var entered = CellSet.Of([.. (~given).Take(20)]);

        var reading = BoardReader.Read(Drawn(puzzle, given, entered), SketchedBoard.Place, GlyphReader.Standard, Lessons.None);

        Assert.All(CellSet.All, cell => Assert.Equal(given.Contains(cell) ? true : entered.Contains(cell) ? false : null, reading[cell].IsGiven));
    }

    private static Frame Drawn(Puzzle puzzle, CellSet given, CellSet entered) => SketchedBoard.Of(canvas =>
    {
        using var font = SketchedBoard.Font("work-sans", 48);
        using var faint = new SKPaint { Color = SKColor.Parse("#7a6278"), IsAntialias = true };
        using var black = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        foreach (var cell in given | entered)
        {
            var (x, y) = (SketchedBoard.Margin + (cell.Index % 9 + 0.5f) * SketchedBoard.Cell, SketchedBoard.Margin + (cell.Index / 9 + 0.5f) * SketchedBoard.Cell);
            canvas.DrawText(puzzle.Solution[cell].ToString(), x, y + 17, SKTextAlign.Center, font, given.Contains(cell) ? faint : black);
        }
    });
}
