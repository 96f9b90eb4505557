using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Makes a strip of each row of a grid of boards. All boards are of one size.</summary>
/// <param name="grid">The grid.</param>
/// <param name="columns">How many boards stand side by side.</param>
/// <param name="size">The size of the words.</param>
/// <param name="letters">What measures them.</param>
/// <param name="body">What the grid may take of a page.</param>
internal sealed class GridStrips(FigureGrid grid, int columns, float size, Lettering letters, SKRect body)
{
    private const float TitleHeight = Measures.Text * Measures.Leading + 1;
    private const float RowGap = 12;
    private const float ColumnGap = 12;
    private const float WordsGap = 2;

    private readonly List<(Tile Tile, List<Strip> Words)[]> _rows =
        [.. grid.Tiles.Select((tile, index) => (tile, Words(tile, index % columns, columns, size, letters, body))).Chunk(columns)];

    // Words that leave less room than the boards need take another page instead.
    private readonly float _leastSide = grid.Tiles.IsEmpty ? 0 : grid.Tiles.Max(tile => FigurePainter.LeastSide(tile.Figure));

    /// <summary>
    /// The rows of a grid, made to fit in what is left of the page, and in the same size after it. Where its words are too long for that
    /// they are set smaller, and where that is not enough, a column is left out: then there are more pages, and larger boards on them.
    /// </summary>
    /// <param name="grid">The grid.</param>
    /// <param name="letters">What measures its words.</param>
    /// <param name="body">What it may take of a page.</param>
    /// <param name="room">What is left of the page.</param>
    internal static IEnumerable<Strip> Of(FigureGrid grid, Lettering letters, SKRect body, float room)
    {
        var large = new GridStrips(grid, grid.Columns, Measures.Caption, letters, body);
        var small = large.Fits(room) ? large : new(grid, grid.Columns, Measures.SmallCaption, letters, body);
        var fewer = small.Fits(room) || grid.Columns == 1 ? small : new(grid, grid.Columns - 1, Measures.Caption, letters, body);
        return fewer.In(room);
    }

    private IEnumerable<Strip> In(float room)
    {
        var side = Math.Min(ColumnWidth(columns, body), Math.Max(_leastSide, HighestSide(room)));
        return _rows.Select(row => Row(row, side));
    }

    private bool Fits(float room) => _leastSide <= HighestSide(room);

    // Of the rows that go on a page those with the longest words decide.
    private float HighestSide(float room)
    {
        var most = _rows.Select(HeightOf).Chunk(grid.Rows).Select(page => page.Sum()).DefaultIfEmpty().Max();
        return (room - grid.Rows * (TitleHeight + RowGap) - most) / grid.Rows;
    }

    private Strip Row((Tile Tile, List<Strip> Words)[] tiles, float side) =>
        new(TitleHeight + side + HeightOf(tiles), (sheet, top) =>
        {
            for (var column = 0; column < tiles.Length; column++)
                Paint(sheet, tiles[column].Tile, tiles[column].Words, new(LeftOf(column, columns, body), top), side);
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

    private static float ColumnWidth(int columns, SKRect body) => (body.Width - (columns - 1) * ColumnGap) / columns;

    private static float LeftOf(int column, int columns, SKRect body) => body.Left + column * (ColumnWidth(columns, body) + ColumnGap);

    private static List<Strip> Words(Tile tile, int column, int columns, float size, Lettering letters, SKRect body) =>
        TextStrips.Of(letters, tile.Words, new(LeftOf(column, columns, body), ColumnWidth(columns, body)) { Size = size });

    private static float HeightOf((Tile Tile, List<Strip> Words)[] tiles) =>
        tiles.Max(tile => tile.Words.Count == 0 ? 0 : WordsGap + tile.Words.Sum(line => line.Height));
}
