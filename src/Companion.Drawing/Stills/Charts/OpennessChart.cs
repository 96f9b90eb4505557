using System.Collections.Immutable;
using System.Globalization;
using Companion.Drawing.Colours;
using Companion.Session.AfterShow.Recaps;
using SkiaSharp;

namespace Companion.Drawing.Stills.Charts;

/// <summary>How much was open over the time of a puzzle: deductions as a solid line, bivalue cells as a broken one.</summary>
/// <param name="points">The points in order; each holds until the next.</param>
/// <param name="end">When the last one ends.</param>
/// <param name="width">Width in pixels, 240 to 8192.</param>
/// <param name="height">Height in pixels, 240 to 8192.</param>
public sealed class OpennessChart(ImmutableArray<Openness> points, TimeSpan end, int width, int height) : Artwork(width, height)
{
    // As shares of the height.
    private const float Letter = 0.06f;
    private const float Line = 0.012f;

    private readonly BoardColours _colours = Palette.Standard.Board[Theme.Paper];

    /// <inheritdoc/>
    public override string Description => points.IsEmpty
        ? "Nothing was open."
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Open deductions over time, at most {points.Max(point => point.Deductions)}, and bivalue cells, at most {points.Max(point => point.BivalueCells)}.");

    internal override void Paint(SKCanvas canvas, Lettering letters)
    {
        using var ground = new SKPaint { Color = _colours.Surround.ToSkia() };
        canvas.DrawRect(SKRect.Create(Width, Height), ground);
        if (points.IsEmpty)
            return;
        var size = Height * Letter;
        var plot = new SKRect(3.2f * size, 2.2f * size, Width - 1.5f * size, Height - 2.2f * size);
        var from = points[0].At;
        var most = NiceMost(points.Max(point => Math.Max(point.Deductions, point.BivalueCells)));
        PaintScale(canvas, letters, plot, size, from, most);

        // In the shapes of strong and weak links: the two are told apart without their colours.
        var palette = Palette.Standard;
        Steps(canvas, plot, from, most, point => point.Deductions, palette.FirstRole, null);
        Steps(canvas, plot, from, most, point => point.BivalueCells, palette.Goes, new(Height * 0.03f, Height * 0.03f));
        var next = Key(canvas, letters, plot.Left, size, "open deductions", palette.FirstRole, null);
        Key(canvas, letters, next, size, "bivalue cells", palette.Goes, new(Height * 0.03f, Height * 0.03f));
    }

    private void PaintScale(SKCanvas canvas, Lettering letters, SKRect plot, float size, TimeSpan from, int most)
    {
        using var pen = new SKPaint { IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = Height * Line / 4, Color = _colours.ThinLine.ToSkia() };
        for (var quarter = 0; quarter <= 4; quarter++)
        {
            var y = plot.Bottom - plot.Height * quarter / 4;
            canvas.DrawLine(plot.Left, y, plot.Right, y, pen);
            var number = (most * quarter / 4).ToString(CultureInfo.InvariantCulture);
            letters.Line(canvas, number, new(plot.Left - size / 2 - letters.WidthOf(number, size), y + size * 0.36f), size, _colours.QuietWords);
            var time = Clock(from + (end - from) * quarter / 4);
            var x = plot.Left + plot.Width * quarter / 4 - (quarter == 0 ? 0 : letters.WidthOf(time, size) / (quarter == 4 ? 1 : 2));
            letters.Line(canvas, time, new(x, plot.Bottom + 1.5f * size), size, _colours.QuietWords);
        }
    }

    private void Steps(SKCanvas canvas, SKRect plot, TimeSpan from, int most, Func<Openness, int> valueOf, Colour colour, Dashes? dashes)
    {
        var span = Math.Max((end - from).TotalSeconds, 1e-3);
        using var builder = new SKPathBuilder();
        for (var index = 0; index < points.Length; index++)
        {
            var y = plot.Bottom - plot.Height * valueOf(points[index]) / most;
            var (left, right) = (X(points[index].At), X(index + 1 < points.Length ? points[index + 1].At : end));
            if (index > 0)
                builder.LineTo(new SKPoint(left, y));
            else
                builder.MoveTo(new SKPoint(left, y));
            builder.LineTo(new SKPoint(right, y));
        }

        using var path = builder.Detach();
        Stroke(canvas, path, colour, dashes);

        float X(TimeSpan at) => plot.Left + plot.Width * (float)Math.Clamp((at - from).TotalSeconds / span, 0, 1);
    }

    private float Key(SKCanvas canvas, Lettering letters, float left, float size, string words, Colour colour, Dashes? dashes)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(new SKPoint(left, size));
        builder.LineTo(new SKPoint(left + 3 * size, size));
        using var path = builder.Detach();
        Stroke(canvas, path, colour, dashes);
        letters.Line(canvas, words, new(left + 3.5f * size, 1.36f * size), size, _colours.Words);
        return left + 5.5f * size + letters.WidthOf(words, size);
    }

    private void Stroke(SKCanvas canvas, SKPath path, Colour colour, Dashes? dashes)
    {
        using var effect = dashes is { } broken ? SKPathEffect.CreateDash([broken.Dash, broken.Gap], 0) : null;
        using var pen = new SKPaint
        {
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = Height * Line,
            Color = colour.ToSkia(),
            PathEffect = effect,
        };
        canvas.DrawPath(path, pen);
    }

    // A number of which a quarter is whole.
    private static int NiceMost(int most) => Math.Max(4, (most + 3) / 4 * 4);

    private static string Clock(TimeSpan time) => string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalMinutes}:{time.Seconds:00}");
}
