using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Makes a strip of each row of a grid of boards. All boards are of one size.</summary>
internal sealed class GridStrips(FigureGrid grid, Lettering letters, SKRect body)
{
    private const float TitleHeight = Measures.Text * Measures.Leading + 1;
    private const float RowGap = 12;
    private const float WordsGap = 2;

    // Words that leave less room than the boards need take another page instead.
    private float LeastSide => grid.Tiles.IsEmpty ? 0 : grid.Tiles.Max(tile => FigurePainter.LeastSide(tile.Figure));

    private float ColumnWidth => (body.Width - (grid.Columns - 1) * Measures.FigureGap) / grid.Columns;

    /// <summary>The rows, made to fit in what is left of the page, and in the same size after it.</summary>
    internal IEnumerable<Strip> In(float room)
    {
        var rows = grid.Tiles.Select((tile, index) => (tile, words: Words(tile, index % grid.Columns))).Chunk(grid.Columns).ToList();
        var side = Side(room, rows.ConvertAll(row => row.Max(tile => HeightOf(tile.words))));
        return rows.Select(row => Row(row, side));
    }

    // Of the rows that go on a page those with the longest words decide.
    private float Side(float room, List<float> words)
    {
        var most = words.Chunk(grid.Rows).Max(page => page.Sum());
        var high = (room - grid.Rows * (TitleHeight + RowGap) - most) / grid.Rows;
        return Math.Min(ColumnWidth, Math.Max(LeastSide, high));
    }

    private Strip Row((Tile Tile, List<Strip> Words)[] tiles, float side) =>
        new(TitleHeight + side + tiles.Max(tile => HeightOf(tile.Words)), (sheet, top) =>
        {
            for (var column = 0; column < tiles.Length; column++)
                Paint(sheet, tiles[column].Tile, tiles[column].Words, new(LeftOf(column), top), side);
        })
        {
            Gap = RowGap,
        };

    private static void Paint(Sheet sheet, Tile tile, List<Strip> words, SKPoint corner, float side)
    {
        sheet.Write(tile.Title, corner.X, corner.Y, Measures.Text, bold: true);
        FigurePainter.PaintBoard(sheet, tile.Figure, new(corner.X, corner.Y + TitleHeight), side);
        var top = corner.Y + TitleHeight + side + WordsGap;
        foreach (var line in words)
        {
            line.Paint(sheet, top);
            top += line.Height;
        }
    }

    private float LeftOf(int column) => body.Left + column * (ColumnWidth + Measures.FigureGap);

    private List<Strip> Words(Tile tile, int column) =>
        TextStrips.Of(letters, tile.Words, new(LeftOf(column), ColumnWidth) { Size = Measures.Caption });

    private static float HeightOf(List<Strip> words) => words.Count == 0 ? 0 : WordsGap + words.Sum(line => line.Height);
}
