using System.Globalization;
using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A candidate on a plate: round if it belongs to the pattern, square with a slash through it if it goes.</summary>
internal static class CandidatePainter
{
    private const double Slash = 0.05;

    // From the middle, without the edge: with it two neighbours do not touch. A square's corners reach further.
    private const double Plate = 0.122;
    private const double Square = 0.107;
    private const double SlashReach = 0.1708;

    // Keeps the digit apart from what crosses its plate.
    private const double Rim = 0.015;

    internal static void Paint(MarkShape mark, Easel easel)
    {
        var middle = easel.Frame.Point(mark.X, mark.Y);
        using var builder = new SKPathBuilder();
        builder.AddCircle(middle.X, middle.Y, easel.Frame.Length(Plate * easel.Sizes.Plates));
        PaintPlate(builder, easel);
        PaintDigit(mark.Digit, middle, easel);
    }

    internal static void Paint(SlashShape slash, Easel easel)
    {
        var (frame, square, reach) = (easel.Frame, Square * easel.Sizes.Plates, SlashReach * easel.Sizes.Plates);
        using var builder = new SKPathBuilder();
        builder.AddRect(frame.Rect(slash.X - square, slash.Y - square, 2 * square, 2 * square));
        PaintPlate(builder, easel);

        using var line = new SKPathBuilder();
        line.MoveTo(frame.Point(slash.X - reach, slash.Y + reach));
        line.LineTo(frame.Point(slash.X + reach, slash.Y - reach));
        using var path = line.Detach();
        easel.Brush.Line(path, frame.Length(Slash), easel.Palette.Goes);

        // The digit last, or the slash would hide it on a small board.
        PaintDigit(slash.Digit, frame.Point(slash.X, slash.Y), easel);
    }

    private static void PaintPlate(SKPathBuilder form, Easel easel)
    {
        using var plate = form.Detach();
        easel.Brush.Plate(plate);
    }

    private static void PaintDigit(int digit, SKPoint middle, Easel easel)
    {
        var (text, size) = (digit.ToString(CultureInfo.InvariantCulture), easel.Frame.Length(easel.Sizes.OnPlate));
        easel.Letters.Rim(easel.Canvas, text, middle, size, easel.Palette.LightEdge, easel.Frame.Length(Rim));
        easel.Letters.Centred(easel.Canvas, text, middle, size, easel.Palette.DarkEdge);
    }
}
