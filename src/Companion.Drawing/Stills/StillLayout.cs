using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Where the board and the words lie on a still: side by side on a wide one, the words below on others. Both keep within the
/// graphics safe area, 5 % from each edge (EBU R 95).
/// </summary>
/// <param name="Board">The board without its numbers.</param>
/// <param name="Words">Where the words go.</param>
/// <param name="IsWide">Whether the words stand beside the board.</param>
internal sealed record StillLayout(BoardFrame Board, SKRect Words, bool IsWide)
{
    private const float Safe = 0.05f;

    // In cells: the numbers of rows and columns before the board, what overhangs it elsewhere, and the gap to the words.
    private const float Numbers = 0.5f;
    private const float Overhang = 0.15f;
    private const float WordsGap = 0.75f;

    private const float Text = 0.3f;

    private const float Wide = 1.25f;
    private const float WidestBoard = 0.62f;
    private const float TallestBoard = 0.74f;

    // Below the board: a title, a setter, two lines of caption on a plate and two rows of legend.
    private const float UnitsBelow = 14;

    /// <summary>The measure of all text, in pixels. It follows the board, so that a still looks the same at every size.</summary>
    internal float TextUnit => IsWide ? Board.CellSize * Text : Math.Min(Board.CellSize * Text, Words.Height / UnitsBelow);

    internal static StillLayout Of(StillOptions options)
    {
        var safe = SKRect.Create(options.Width, options.Height);
        safe.Inflate(-options.Width * Safe, -options.Height * Safe);
        return safe.Width >= Wide * safe.Height ? SideBySide(safe) : Stacked(safe);
    }

    private static StillLayout SideBySide(SKRect safe)
    {
        const float Cells = 9 + Numbers + Overhang;
        var cell = MathF.Floor(Math.Min(safe.Height, safe.Width * WidestBoard) / Cells);
        var board = new BoardFrame(
            MathF.Round(safe.Left + Numbers * cell),
            MathF.Round(safe.Top + Numbers * cell + (safe.Height - Cells * cell) / 2),
            cell);
        var words = new SKRect(board.Bounds.Right + WordsGap * cell, board.Top, safe.Right, board.Bounds.Bottom);
        return new(board, words, IsWide: true);
    }

    private static StillLayout Stacked(SKRect safe)
    {
        const float Cells = 9 + Numbers + Overhang;
        var cell = MathF.Floor(Math.Min(safe.Width, safe.Height * TallestBoard) / Cells);
        var gap = WordsGap * cell / 2;
        var spare = Math.Max(0, safe.Height - Cells * cell - gap - UnitsBelow * Text * cell);
        var board = new BoardFrame(
            MathF.Round(safe.MidX - 4.5f * cell + (Numbers - Overhang) / 2 * cell),
            MathF.Round(safe.Top + spare / 2 + Numbers * cell),
            cell);
        var words = new SKRect(safe.Left, board.Bounds.Bottom + gap, safe.Right, safe.Bottom - spare / 2);
        return new(board, words, IsWide: false);
    }
}
