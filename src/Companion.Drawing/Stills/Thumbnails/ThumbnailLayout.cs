using SkiaSharp;

namespace Companion.Drawing.Stills.Thumbnails;

/// <summary>Where board and words lie on a thumbnail: side by side on a wide one, the words above on others.</summary>
/// <param name="Board">The board, which has no numbers beside it.</param>
/// <param name="Words">Where the words go.</param>
/// <param name="Unit">The measure of all letters, in pixels: the height of a wide one.</param>
internal sealed record ThumbnailLayout(BoardFrame Board, SKRect Words, float Unit)
{
    private const float Safe = 0.05f;

    // In cells: what overhangs the board, tabs and outlines of houses among it.
    private const float Overhang = 0.2f;
    private const float Cells = 9 + 2 * Overhang;

    // More of the width and the words are too narrow for their letters.
    private const float WidestBoard = 0.52f;
    private const float TallestBoard = 0.6f;
    private const float Gap = 0.5f;

    internal static ThumbnailLayout Of(int width, int height)
    {
        // Whole pixels inwards, so that no edge is blurred across the line.
        var safe = new SKRect(
            MathF.Ceiling(width * Safe), MathF.Ceiling(height * Safe), MathF.Floor(width * (1 - Safe)), MathF.Floor(height * (1 - Safe)));
        return width >= 1.25 * height ? SideBySide(safe, height) : Stacked(safe, width);
    }

    private static ThumbnailLayout SideBySide(SKRect safe, float height)
    {
        var cell = MathF.Floor(Math.Min(safe.Height, safe.Width * WidestBoard) / Cells);
        var board = new BoardFrame(
            MathF.Floor(safe.Right - (9 + Overhang) * cell), MathF.Round(safe.MidY - 4.5f * cell), cell);
        return new(board, safe with { Right = board.Left - (Overhang + Gap) * cell }, height);
    }

    private static ThumbnailLayout Stacked(SKRect safe, float width)
    {
        var cell = MathF.Floor(Math.Min(safe.Width, safe.Height * TallestBoard) / Cells);
        var board = new BoardFrame(MathF.Round(safe.MidX - 4.5f * cell), MathF.Floor(safe.Bottom - (9 + Overhang) * cell), cell);
        return new(board, safe with { Bottom = board.Top - (Overhang + Gap / 2) * cell }, width * 0.75f);
    }
}
