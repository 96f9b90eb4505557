using Companion.Sight.Tests.Finding;
using SkiaSharp;

namespace Companion.Sight.Tests.Boards;

/// <summary>A drawn board as a camera takes it: from aside, in uneven light, with noise, a little out of focus, as JPEG.</summary>
internal static class Photograph
{
    private const int Width = 1600, Height = 1200;

    public static Frame Of(DrawnBoard board, int seed)
    {
        var random = new Random(seed);
        float Around(double middle, double by) => (float)(middle + by * (2 * random.NextDouble() - 1));
        SKPoint[] corners =
        [
            new(Around(330, 70), Around(150, 60)), new(Around(1250, 70), Around(150, 60)),
            new(Around(1250, 70), Around(1060, 60)), new(Around(330, 70), Around(1060, 60)),
        ];
        using var screen = SKBitmap.Decode(board.File);
        using var image = SKImage.FromBitmap(screen);
        using var photo = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(photo))
        {
            canvas.Clear(new(0xff5a4a3a));
            canvas.Save();
            canvas.SetMatrix(Warp.To(corners, board.Place.TopLeft.X, board.Place.TopLeft.Y, board.Place.TopRight.X - board.Place.TopLeft.X));
            using var lens = new SKPaint { ImageFilter = SKImageFilter.CreateBlur(Around(0.7, 0.4), Around(0.7, 0.4), SKShaderTileMode.Clamp) };
            canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear), lens);
            canvas.Restore();
            using var shade = SKShader.CreateLinearGradient(
                new(Around(400, 400), 0), new(Around(1200, 400), Height), [new(0, 0, 0, (byte)random.Next(60)), new(0, 0, 0, (byte)random.Next(60, 110))], SKShaderTileMode.Clamp);
            using var light = new SKPaint { Shader = shade };
            canvas.DrawRect(0, 0, Width, Height, light);
        }

        var pixels = photo.GetPixelSpan();
        for (var at = 0; at < pixels.Length; at++)
            pixels[at] = at % 4 == 3 ? (byte)255 : (byte)Math.Clamp(pixels[at] + random.Next(-5, 6), 0, 255);
        using var data = photo.Encode(SKEncodedImageFormat.Jpeg, 88);
        return Frame.Decode(data.Span)!;
    }
}
