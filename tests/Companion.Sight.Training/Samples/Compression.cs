using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>What a JPEG or a WebP leaves of a picture.</summary>
internal static class Compression
{
    /// <summary>The picture as it comes out, at a quality of 50 to 95, or untouched. Takes the picture over.</summary>
    public static SKBitmap Passed(Random random, SKBitmap picture)
    {
        var lot = random.NextDouble();
        if (lot < 0.45)
            return picture;
        using (picture)
        using (var data = picture.Encode(lot < 0.85 ? SKEncodedImageFormat.Jpeg : SKEncodedImageFormat.Webp, random.Next(50, 96)))
        using (var codec = SKCodec.Create(data))
            return SKBitmap.Decode(codec, picture.Info);
    }
}
