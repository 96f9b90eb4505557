using Companion.Sight.Tests.Digits;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>A white board of 720 pixels with grey lines, on which a test draws.</summary>
internal static class SketchedBoard
{
    public const int Side = 720, Margin = 40, Cell = 80;

    public static GridPlace Place { get; } =
        new(new(Margin, Margin), new(Margin + Side, Margin), new(Margin + Side, Margin + Side), new(Margin, Margin + Side));

    /// <summary>A family that the network was never trained on, upright and regular.</summary>
    public static SKFont Font(string family, float size) => new(
        HeldOutFonts.Families.First(other => other.Name == family).Faces.First(face => face.FontWeight == 400 && face.FontSlant == SKFontStyleSlant.Upright), size)
    { Subpixel = true };

    /// <summary>Draws one.</summary>
    /// <param name="draw">Draws what stands in the cells.</param>
    public static Frame Of(Action<SKCanvas> draw)
    {
        var side = Side + 2 * Margin;
        using var bitmap = new SKBitmap(new SKImageInfo(side, side, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        using var pen = new SKPaint { Color = SKColors.Gray, StrokeWidth = 2 };
        for (var line = 0; line <= 9; line++)
        {
            canvas.DrawLine(Margin + line * Cell, Margin, Margin + line * Cell, Margin + Side, pen);
            canvas.DrawLine(Margin, Margin + line * Cell, Margin + Side, Margin + line * Cell, pen);
        }

        draw(canvas);
        canvas.Flush();
        return new(side, side, bitmap.GetPixelSpan().ToArray());
    }
}
