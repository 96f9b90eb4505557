using SkiaSharp;

namespace Companion.Sight.Training.Boards;

/// <summary>A digit or a mark on a painted board.</summary>
/// <param name="Cell">The cell's index.</param>
/// <param name="Digit">1 to 9.</param>
/// <param name="IsBig">Whether it is a digit and no mark.</param>
/// <param name="IsStruck">Whether a line goes through it.</param>
/// <param name="Place">The pixels of the picture that its ink is in, without the line.</param>
/// <param name="Ink">How much of each of them, 0 to 255, row by row.</param>
/// <param name="Covered">The part of its ink, and of the line's, that lies under something: 0 to 1.</param>
internal sealed record BoardPiece(int Cell, int Digit, bool IsBig, bool IsStruck, SKRectI Place, byte[] Ink, float Covered)
{
    /// <summary>All of its ink.</summary>
    public int All { get; } = Ink.Sum(part => part);

    /// <summary>How much of its ink is in a pixel of the picture.</summary>
    public int At(int x, int y) => Place.Contains(x, y) ? Ink[(y - Place.Top) * Place.Width + x - Place.Left] : 0;
}
