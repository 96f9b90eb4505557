using System.Collections.Immutable;
using Microsoft.Playwright;
using SkiaSharp;

namespace Companion.Sight.Tests.Boards;

/// <summary>
/// Tells which digits and marks are covered by what is drawn over a board, so that nobody could tell them: each is painted alone, and
/// counted is the part of its ink that lies under the outline of such a thing.
/// </summary>
internal static class Covering
{
    /// <summary>
    /// The part of the ink of a digit, mark or line from which on it counts as covered. A quarter of the ink is what makes another digit of
    /// most: the bar of a 7, the foot of a 2, an arm of a 4, a side of an 8.
    /// </summary>
    public const double Untold = 0.25;

    /// <summary>Tells.</summary>
    /// <param name="page">Where they are painted, at the style's scale.</param>
    /// <param name="style">The style.</param>
    /// <param name="cells">What stands on the board.</param>
    /// <returns>The same with what is covered told apart.</returns>
    public static async Task<ImmutableArray<DrawnCell>> TellAsync(IPage page, BoardStyle style, ImmutableArray<DrawnCell> cells)
    {
        using var over = Together(Decoration.Of(style).Over);
        var told = cells.ToBuilder();
        foreach (var piece in Lettering.Of(style, cells))
        {
            if (!Meets(over, piece) || await CoveredAsync(page, style, piece.Drawn, over) < Untold)
                continue;
            var cell = told[piece.Cell];
            told[piece.Cell] = piece.Mark < 0
                ? cell with { IsCovered = true }
                : cell with { Marks = cell.Marks.SetItem(piece.Mark, cell.Marks[piece.Mark] with { IsCovered = true }) };
        }

        return told.MoveToImmutable();
    }

    private static SKPath Together(List<Drawn> drawn)
    {
        using var all = new SKPathBuilder();
        foreach (var one in drawn)
        {
            using var outline = one.Outline!;
            all.AddPath(outline);
        }

        return all.Detach();
    }

    // No figure is wider or higher than its size.
    private static bool Meets(SKPath over, Lettering.Piece piece)
    {
        using var box = new SKPathBuilder();
        box.AddRect(SKRect.Create(piece.X - piece.Size / 2, piece.Y - piece.Size / 2, piece.Size, piece.Size));
        using var outline = box.Detach();
        using var common = over.Op(outline, SKPathOp.Intersect);
        return !common.IsEmpty;
    }

    private static async Task<double> CoveredAsync(IPage page, BoardStyle style, Drawn drawn, SKPath over)
    {
        using var alone = SKBitmap.Decode(await DrawnBoard.ScreenshotAsync(page, style, BoardPage.Alone(style, drawn)));
        var all = Ink(alone);
        using var canvas = new SKCanvas(alone);
        canvas.Scale(style.Scale);
        canvas.Translate(style.Left, style.Top);
        using var white = new SKPaint { Color = SKColors.White, IsAntialias = true };
        canvas.DrawPath(over, white);
        canvas.Flush();
        return 1 - Ink(alone) / all;
    }

    private static double Ink(SKBitmap picture)
    {
        var sum = 0L;
        var pixels = picture.GetPixelSpan();
        for (var at = 0; at < pixels.Length; at += picture.BytesPerPixel)
            sum += 255 - pixels[at + 1];
        return sum;
    }
}
