namespace Companion.Drawing.Pictures;

/// <summary>A point in board units; (0, 0) is the board's top left corner and a cell is 1 by 1.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
internal readonly record struct BoardPoint(double X, double Y)
{
    public static BoardPoint operator +(BoardPoint left, BoardPoint right) => new(left.X + right.X, left.Y + right.Y);

    public static BoardPoint operator -(BoardPoint left, BoardPoint right) => new(left.X - right.X, left.Y - right.Y);

    public static BoardPoint operator *(BoardPoint point, double factor) => new(point.X * factor, point.Y * factor);

    internal double Length => Math.Sqrt(X * X + Y * Y);

    internal double DistanceTo(BoardPoint other) => (this - other).Length;
}
