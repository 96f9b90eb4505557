using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>The part of a frame around a glyph, with all that a stream and a web page do to it.</summary>
/// <param name="Picture">The pixels.</param>
/// <param name="Colours">The colours it was drawn in.</param>
/// <param name="Box">Where the glyph is in it.</param>
internal sealed record Scene(SKBitmap Picture, SceneColours Colours, SKRect Box) : IDisposable
{
    /// <summary>Draws one.</summary>
    /// <param name="random">What is left to the lot.</param>
    /// <param name="subject">The glyph.</param>
    /// <param name="height">How high a digit is there, in pixels.</param>
    public static Scene Of(Random random, Subject subject, float height)
    {
        var colours = SceneColours.Pick(random);
        var room = Math.Max(5, 0.5f * height);
        var size = new SKSizeI((int)(subject.Bounds.Width + 2 * room) + 1, (int)(subject.Bounds.Height + 2 * room) + 1);
        // Drawn at another size and scaled, as a stream or a zoomed page is; never from fewer pixels than a small digit needs.
        var zoom = random.Chance(0.2) ? random.BetweenByRatio(Math.Clamp(SampleRange.Least / height, 0.7f, 1), 1.8f) : 1;
        var info = new SKImageInfo((int)(size.Width * zoom) + 1, (int)(size.Height * zoom) + 1, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info, new SKSurfaceProperties(random.Chance(0.5) ? SKPixelGeometry.RgbHorizontal : SKPixelGeometry.BgrHorizontal));
        var canvas = surface.Canvas;
        canvas.Scale(zoom);
        Ground(random, canvas, colours, size);
        var place = Place(random, subject.Bounds, size);
        canvas.Save();
        canvas.Concat(place);
        using (var paint = new SKPaint { IsAntialias = true, Color = colours.Ink })
            subject.Paint(canvas, paint);
        canvas.Restore();
        var box = place.MapRect(subject.Bounds);
        if (height < SampleRange.Small.To && subject.Neighbour is { } neighbour && random.Chance(0.06))
            box = Remains.Neighbour(random, canvas, colours, box, neighbour, height);
        if (subject.MayBeStruck && random.Chance(height < SampleRange.Small.To ? 0.16 : 0.1))
            box = Remains.Strike(random, canvas, colours, box, height);
        if (random.Chance(0.2))
            Remains.GridLine(random, canvas, colours, box, size, height);
        return new(Photographed(random, surface, info, size, zoom, height), colours, box);
    }

    /// <inheritdoc/>
    public void Dispose() => Picture.Dispose();

    private static void Ground(Random random, SKCanvas canvas, SceneColours colours, SKSizeI size)
    {
        canvas.Clear(colours.Ground);
        if (colours.Other == colours.Ground)
            return;
        using var shade = SKShader.CreateLinearGradient(
            new(random.Between(0, size.Width), 0),
            new(random.Between(0, size.Width), size.Height),
            [colours.Ground, colours.Other],
            SKShaderTileMode.Clamp);
        using var paint = new SKPaint { Shader = shade };
        canvas.DrawRect(SKRect.Create(size.Width, size.Height), paint);
    }

    /// <summary>In the middle, moved by parts of a pixel, sometimes turned a little or seen from aside.</summary>
    private static SKMatrix Place(Random random, SKRect bounds, SKSizeI size)
    {
        var place = SKMatrix.CreateTranslation(-bounds.MidX, -bounds.MidY);
        if (random.Chance(0.25))
            place = place.PostConcat(SKMatrix.CreateRotationDegrees(random.Normal(2.5f)));
        if (random.Chance(0.12))
        {
            var aside = SKMatrix.Identity;
            aside.Persp0 = random.Normal(0.06f) / bounds.Height;
            aside.Persp1 = random.Normal(0.06f) / bounds.Height;
            aside.SkewX = random.Normal(0.05f);
            place = place.PostConcat(aside);
        }

        return place.PostConcat(SKMatrix.CreateTranslation(
            size.Width / 2f + random.Between(-0.5f, 0.5f), size.Height / 2f + random.Between(-0.5f, 0.5f)));
    }

    private static SKBitmap Photographed(Random random, SKSurface surface, SKImageInfo info, SKSizeI size, float zoom, float height)
    {
        var picture = new SKBitmap(info.WithSize(size.Width, size.Height));
        using var canvas = new SKCanvas(picture);
        using var drawn = surface.Snapshot();
        using var paint = new SKPaint();
        if (random.Chance(0.25))
            paint.ImageFilter = SKImageFilter.CreateBlur(Sigma(), Sigma(), SKShaderTileMode.Clamp);
        var sampling = zoom == 1 ? SKSamplingOptions.Default
            : random.Chance(0.5) ? new SKSamplingOptions(SKCubicResampler.Mitchell)
            : new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear);
        canvas.Clear(SKColors.White);
        canvas.DrawImage(drawn, SKRect.Create(size.Width * zoom, size.Height * zoom), SKRect.Create(size.Width, size.Height), sampling, paint);
        return Compression.Passed(random, picture);

        float Sigma() => random.Between(0.2f, Math.Min(1.1f, 0.05f * height));
    }
}
