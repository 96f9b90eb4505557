using Companion.Sight.Finding;

namespace Companion.Sight.Reading;

/// <summary>A board whose lines run along rows and columns of pixels, and where its cells are.</summary>
/// <param name="Frame">The picture.</param>
/// <param name="Boxes">The 81 cells, row by row.</param>
internal sealed record StraightBoard(Frame Frame, CellBox[] Boxes)
{
    /// <summary>Finds the cells of a grid.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="place">Where the grid is.</param>
    /// <exception cref="ArgumentException">The corners of the place make no grid.</exception>
    public static StraightBoard Of(Frame frame, GridPlace place)
    {
        var (straight, columns, rows) = Straight(frame, place);
        return Of(straight, LineFit.Of(straight, columns, rows));
    }

    /// <summary>The picture with a grid's lines along its rows and columns of pixels, and where they are about.</summary>
    /// <param name="frame">The picture; it is returned itself where the grid stands straight.</param>
    /// <param name="place">Where the grid is.</param>
    /// <exception cref="ArgumentException">The corners of the place make no grid.</exception>
    public static (Frame Frame, GridLines Columns, GridLines Rows) Straight(Frame frame, GridPlace place)
    {
        if (IsUpright(place))
            return (frame, GridLines.Even(place.TopLeft.X, place.TopRight.X), GridLines.Even(place.TopLeft.Y, place.BottomLeft.Y));
        var square = Straightened.Of(frame, place) ?? throw new ArgumentException("The four corners make no grid.", nameof(place));
        var even = GridLines.Even(square.Margin, square.Margin + square.Side);
        return (square.Frame, even, even);
    }

    /// <summary>The cells between lines.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="fit">The lines.</param>
    public static StraightBoard Of(Frame frame, GridFit fit)
    {
        var boxes = new CellBox[Engine.Cell.Count];
        for (var index = 0; index < boxes.Length; index++)
        {
            var (row, column) = (index / 9, index % 9);
            var (left, right) = Within(fit.Columns, column, frame.Width);
            var (top, bottom) = Within(fit.Rows, row, frame.Height);
            boxes[index] = new(
                left, top, right, bottom, fit.Columns.At[column], fit.Rows.At[row],
                fit.Columns.At[column + 1] - fit.Columns.At[column], fit.Rows.At[row + 1] - fit.Rows.At[row]);
        }

        return new(frame, boxes);
    }

    private static bool IsUpright(GridPlace place)
    {
        const float Tolerance = 1;
        return Math.Abs(place.TopLeft.X - place.BottomLeft.X) <= Tolerance && Math.Abs(place.TopRight.X - place.BottomRight.X) <= Tolerance
            && Math.Abs(place.TopLeft.Y - place.TopRight.Y) <= Tolerance && Math.Abs(place.BottomLeft.Y - place.BottomRight.Y) <= Tolerance;
    }

    private static (int From, int To) Within(GridLines lines, int cell, int length)
    {
        var from = Math.Clamp((int)MathF.Ceiling(lines.At[cell] + lines.Half[cell]), 0, length - 2);
        var to = Math.Clamp((int)(lines.At[cell + 1] - lines.Half[cell + 1]), from + 1, length);
        return (from, to);
    }
}
