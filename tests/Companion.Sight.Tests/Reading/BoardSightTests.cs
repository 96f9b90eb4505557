using Companion.Sight.Tests.Finding;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

public sealed class BoardSightTests
{
    private readonly BoardSight _sight = new(GlyphReader.Standard);

    [Fact]
    public void Only_cells_that_changed_are_read_again()
    {
        Assert.NotNull(See(new DrawnGrid()));
        Assert.Equal(81, _sight.ReadAnew);

        var reading = See(new DrawnGrid(), (4, 5));
        Assert.Equal(1, _sight.ReadAnew);
        Assert.True(reading!.Cells[4 * 9 + 5].IsUnsure);
        Assert.Equal(1, reading.Cells.Count(cell => cell.IsUnsure));

        Assert.Same(reading, See(new DrawnGrid(), (4, 5)));
        Assert.Equal(0, _sight.ReadAnew);
    }

    [Fact]
    public void A_grid_that_moves_is_found_again_and_one_that_goes_is_gone()
    {
        See(new DrawnGrid());
        var before = _sight.Place;

        Assert.NotNull(See(new DrawnGrid { Left = 400 }));
        Assert.Equal(81, _sight.ReadAnew);
        Assert.InRange(_sight.Place!.TopLeft.X - before!.TopLeft.X, 99, 101);

        Assert.Null(_sight.See(new(1280, 720, new byte[4 * 1280 * 720]), Lessons.None));
        Assert.Null(_sight.Place);
    }

    [Fact]
    public void What_is_taught_is_read_anew()
    {
        var reading = See(new DrawnGrid(), (0, 0))!;

        var taught = Lessons.None.Add(GlyphImage.Empty, null);
        Assert.NotNull(_sight.See(Frame(new DrawnGrid(), (0, 0)), taught));
        Assert.Equal(81, _sight.ReadAnew);
        Assert.True(reading.Cells[0].IsUnsure);
    }

    private BoardReading? See(DrawnGrid grid, params (int Row, int Column)[] scribbles) => _sight.See(Frame(grid, scribbles), Lessons.None);

    // A scribble is no digit.
    private static Frame Frame(DrawnGrid grid, params (int Row, int Column)[] scribbles)
    {
        using var bitmap = grid.Bitmap();
        using (var canvas = new SKCanvas(bitmap))
        using (var pen = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = 3, IsAntialias = true })
        {
            foreach (var (row, column) in scribbles)
            {
                var (x, y) = (grid.Left + (column + 0.5f) * grid.Side / 9, grid.Top + (row + 0.5f) * grid.Side / 9);
                canvas.DrawLine(x - 14, y - 14, x + 14, y + 14, pen);
                canvas.DrawLine(x - 14, y + 14, x + 14, y - 14, pen);
            }
        }

        return DrawnGrid.Of(bitmap);
    }
}
