using SkiaSharp;

namespace Companion.Sight.Tests.Finding;

/// <summary>A screen with a grid of any number of lines, drawn line by line.</summary>
internal sealed record DrawnGrid
{
    public int Cells { get; init; } = 9;
    public float Left { get; init; } = 300;
    public float Top { get; init; } = 100;
    public float Side { get; init; } = 540;
    public uint Ground { get; init; } = 0xffffffff;
    public uint CellLine { get; init; } = 0xff808080;
    public uint BlockLine { get; init; } = 0xff000000;
    public float Thin { get; init; } = 1;
    public float Thick { get; init; } = 3;
    public bool HasBorder { get; init; } = true;

    public SKBitmap Bitmap(int width = 1280, int height = 720)
    {
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(new(Ground));
        using var pen = new SKPaint { IsAntialias = true, Style = SKPaintStyle.Stroke };
        canvas.DrawRect(8, 8, width - 16, 40, pen);
        foreach (var isBlock in (bool[])[false, true])
        {
            (pen.Color, pen.StrokeWidth) = isBlock ? (new(BlockLine), Thick) : (new SKColor(CellLine), Thin);
            for (var line = HasBorder ? 0 : 1; line <= (HasBorder ? Cells : Cells - 1); line++)
            {
                if (line % 3 == 0 != isBlock)
                    continue;
                var at = line * Side / Cells;
                canvas.DrawLine(Left + at, Top, Left + at, Top + Side, pen);
                canvas.DrawLine(Left, Top + at, Left + Side, Top + at, pen);
            }
        }

        return bitmap;
    }

    public Frame Frame()
    {
        using var bitmap = Bitmap();
        return Of(bitmap);
    }

    public static Frame Of(SKBitmap bitmap) => new(bitmap.Width, bitmap.Height, bitmap.Bytes);

    /// <summary>The same as a camera sees it that looks from aside: the corners go where they are said to.</summary>
    public Frame Photo(params SKPoint[] corners)
    {
        using var flat = Bitmap();
        using var photo = new SKBitmap(new SKImageInfo(1600, 1200, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(photo))
        {
            canvas.Clear(new(0xff705030));
            canvas.SetMatrix(Warp.To(corners, Left, Top, Side));
            using var paper = new SKPaint { Color = new(Ground), IsAntialias = true };
            canvas.DrawRect(Left - 60, Top - 40, Side + 120, Side + 80, paper);
            using var image = SKImage.FromBitmap(flat);
            canvas.ClipRect(new(Left - 50, Top - 30, Left + Side + 50, Top + Side + 30));
            canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }

        return Of(photo);
    }
}
