using Companion.Sight.Reading;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

public sealed class OverlayTests
{
    [Fact]
    public void A_mark_covers_itself()
    {
        var over = Overlay.Of(Seven(0), Seven(0));

        Assert.InRange(over.Astray, 0, 0.001f);
        Assert.False(over.IsSuspicious);
    }

    [Theory]
    [InlineData(0.25f, 0.24f)]
    [InlineData(0.5f, 0.36f)]
    [InlineData(0.75f, 0.24f)]
    public void Edges_between_pixels_cancel_out_mostly(float shift, float most)
    {
        var over = Overlay.Of(Seven(shift), Seven(0));

        Assert.InRange(over.Astray, 0, most);
        Assert.False(over.MayBeStruck);
    }

    [Theory]
    [InlineData(-3, 9, 11, 5)]
    [InlineData(-3, 8, 11, 8)]
    [InlineData(-1, 13, 9, 1)]
    public void A_line_through_a_mark_is_told_from_the_mark(float fromX, float fromY, float toX, float toY)
    {
        var over = Overlay.Of(Seven(0, new(fromX, fromY), new(toX, toY)), Seven(0));

        Assert.True(over.IsStruck, $"{over}");
        Assert.InRange(over.Astray, 0, 0.2f);
    }

    [Fact]
    public void A_line_that_passes_by_is_none_through_it() =>
        Assert.False(Overlay.Of(Seven(0, new(-3, 15), new(11, 15)), Seven(0)).MayBeStruck);

    [Fact]
    public void The_mark_without_the_line_is_not_struck() =>
        Assert.False(Overlay.Of(Seven(0), Seven(0, new(-3, 9), new(11, 5))).MayBeStruck);

    // A bar and a stem, 8 by 14 pixels, in a plane that has room for a line.
    private static InkPlane Seven(float shift, SKPoint? from = null, SKPoint? to = null)
    {
        const int Side = 24;
        using var bitmap = new SKBitmap(new SKImageInfo(Side, Side, SKColorType.Gray8));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.Black);
        canvas.Translate(8 + shift, 5);
        using var pen = new SKPaint { Color = SKColors.White, IsAntialias = true, StrokeWidth = 1.6f, Style = SKPaintStyle.Stroke };
        canvas.DrawLine(0, 1, 8, 1, pen);
        canvas.DrawLine(8, 1, 3, 14, pen);
        pen.StrokeWidth = 1.2f;
        if (from is { } start && to is { } end)
            canvas.DrawLine(start, end, pen);
        canvas.Flush();
        float[] ink = [.. bitmap.GetPixelSpan().ToArray().Select(value => value / 255f)];
        // Close around the ink, as glyphs are cut out.
        int[] set = [.. Enumerable.Range(0, ink.Length).Where(pixel => ink[pixel] > 0.2f)];
        var (left, right) = (set.Min(pixel => pixel % Side) - InkPatch.Room, set.Max(pixel => pixel % Side) + InkPatch.Room + 1);
        var (top, bottom) = (set.Min(pixel => pixel / Side) - InkPatch.Room, set.Max(pixel => pixel / Side) + InkPatch.Room + 1);
        return new(right - left, bottom - top, [.. from y in Enumerable.Range(top, bottom - top) from x in Enumerable.Range(left, right - left) select ink[y * Side + x]]);
    }
}
