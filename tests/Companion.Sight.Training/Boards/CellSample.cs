using Companion.Sight.Reading;

namespace Companion.Sight.Training.Boards;

/// <summary>A cell of a painted board, and what stands where in it.</summary>
/// <param name="Ink">The cell.</param>
/// <param name="Kinds">For each place of a raster over its image, row by row: nothing, a mark, a big digit, or nobody has to tell.</param>
/// <param name="Lines">For each place with a mark whether a line goes through it, 0 or 1; everywhere else nobody has to tell.</param>
internal sealed record CellSample(CellInk Ink, byte[] Kinds, byte[] Lines)
{
    /// <summary>Nothing, nine marks, nine big digits.</summary>
    public const int Classes = 1 + 2 * Engine.Digit.Count;

    /// <summary>Columns and rows of the raster.</summary>
    public const int Places = 16;

    /// <summary>Nobody has to tell what is there: it is beside a digit's middle, or too much is over it.</summary>
    public const byte Untold = 255;

    // Of the ink: what is covered by more is not looked for.
    private const float Seen = 0.5f;

    // Of a board: cells in which much happens tell more.
    private const int Most = 24;

    /// <summary>Some cells of a board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="random">The lot.</param>
    public static IEnumerable<CellSample> Of(PaintedBoard board, Random random)
    {
        var straight = StraightBoard.Of(board.Frame, board.Place);
        var pieces = board.Pieces.ToLookup(piece => piece.Cell);
        return Enumerable.Range(0, straight.Boxes.Length).OrderBy(index => random.NextDouble() / Weight([.. pieces[index]])).Take(Most)
            .Select(index => Of(CellInk.Of(straight.Frame, straight.Boxes[index]), pieces[index])).ToList();
    }

    private static double Weight(BoardPiece[] pieces) =>
        (pieces.Length == 0 ? 0.12 : pieces[0].IsBig ? 0.3 : 1)
        + (Array.Exists(pieces, piece => piece.IsStruck) ? 1 : 0)
        + (Array.Exists(pieces, piece => piece.Covered is > 0.03f and < Seen) ? 2 : 0);

    private static CellSample Of(CellInk ink, IEnumerable<BoardPiece> pieces)
    {
        var (kinds, lines) = (new byte[Places * Places], new byte[Places * Places]);
        Array.Fill(lines, Untold);
        var middles = pieces.Select(piece => (Piece: piece, At: Place(ink.Box, piece))).ToList();
        foreach (var (piece, at) in middles)
        {
            var (column, row) = (at % Places, at / Places);
            var reach = piece.IsBig ? 2 : 1;
            for (var y = Math.Max(0, row - reach); y <= Math.Min(Places - 1, row + reach); y++)
                kinds.AsSpan(y * Places + Math.Max(0, column - reach), Math.Min(Places - 1, column + reach) - Math.Max(0, column - reach) + 1).Fill(Untold);
        }

        foreach (var (piece, at) in middles.Where(one => one.Piece.Covered < Seen))
        {
            kinds[at] = (byte)(piece.Digit + (piece.IsBig ? Engine.Digit.Count : 0));
            lines[at] = piece.IsBig ? Untold : (byte)(piece.IsStruck ? 1 : 0);
        }

        return new(ink, kinds, lines);
    }

    /// <summary>The place of the raster in which something is.</summary>
    /// <param name="x">Its column in the image.</param>
    /// <param name="y">Its row in the image.</param>
    /// <returns>Row by row, from 0.</returns>
    public static int Place(float x, float y)
    {
        const int Step = CellImage.Side / Places;
        return Math.Clamp((int)(y / Step), 0, Places - 1) * Places + Math.Clamp((int)(x / Step), 0, Places - 1);
    }

    private static int Place(CellBox box, BoardPiece piece)
    {
        var (x, y) = CellImage.Of(box, (piece.Place.Left + piece.Place.Right) / 2f, (piece.Place.Top + piece.Place.Bottom) / 2f);
        return Place(x, y);
    }
}
