using Companion.Drawing.Colours;
using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Draws boards as pictures that stand among words on a screen.</summary>
public static class FigureImage
{
    /// <summary>How large a board is that belongs to a step, in points.</summary>
    internal const float StepSide = 205;

    // Pixels for each point that the same takes on paper.
    private const float Density = 2.5f;

    /// <summary>A board that belongs to a step, with what its shapes mean beside it.</summary>
    /// <param name="figure">The board.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] InStep(Figure figure) => Png(figure, StepSide, withLegend: true);

    /// <summary>How wide a board is, in points.</summary>
    internal static float WidthOf(float side, bool withLegend) => withLegend ? FigurePainter.WidthWithLegend(side) : side;

    /// <summary>A board of this size in points.</summary>
    internal static byte[] Png(Figure figure, float side, bool withLegend)
    {
        var width = WidthOf(side, withLegend);
        using var bitmap = new SKBitmap((int)(width * Density), (int)(side * Density), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        using var letters = new Lettering();
        var sheet = new Sheet(canvas, letters, Palette.Standard);
        canvas.Clear(sheet.Colours.Surround.ToSkia());
        canvas.Scale(Density);
        if (withLegend)
            FigurePainter.PaintWithLegend(sheet, figure, SKRect.Create(width, side));
        else
            FigurePainter.PaintBoard(sheet, figure, default, side);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
