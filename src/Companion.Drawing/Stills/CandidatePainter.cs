using System.Globalization;
using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A candidate on a plate: round if it belongs to the pattern, square with a slash through it if it goes.</summary>
internal static class CandidatePainter
{
    private const double Digit = 0.215;
    private const double Plate = 0.11;
    private const double Slash = 0.045;
    private const double SlashReach = 0.14;
    private const double Rim = 0.03;

    internal static void Paint(MarkShape mark, Easel easel)
    {
        var middle = easel.Frame.Point(mark.X, mark.Y);
        using var builder = new SKPathBuilder();
        builder.AddCircle(middle.X, middle.Y, easel.Frame.Length(Plate));
        PaintPlate(builder, easel);
        PaintDigit(mark.Digit, middle, rim: 0, easel);
    }

    internal static void Paint(SlashShape slash, Easel easel)
    {
        var frame = easel.Frame;
        using var builder = new SKPathBuilder();
        builder.AddRect(frame.Rect(slash.X - Plate, slash.Y - Plate, 2 * Plate, 2 * Plate));
        PaintPlate(builder, easel);

        using var line = new SKPathBuilder();
        line.MoveTo(frame.Point(slash.X - SlashReach, slash.Y + SlashReach));
        line.LineTo(frame.Point(slash.X + SlashReach, slash.Y - SlashReach));
        using var path = line.Detach();
        easel.Brush.Line(path, frame.Length(Slash), easel.Palette.Goes);

        // The digit last and with a rim, or the slash would hide it on a small board.
        PaintDigit(slash.Digit, frame.Point(slash.X, slash.Y), frame.Length(Rim), easel);
    }

    private static void PaintPlate(SKPathBuilder form, Easel easel)
    {
        using var plate = form.Detach();
        easel.Brush.Fill(plate, easel.Palette.LightEdge);
    }

    private static void PaintDigit(int digit, SKPoint middle, float rim, Easel easel)
    {
        var (text, size) = (digit.ToString(CultureInfo.InvariantCulture), easel.Frame.Length(Digit));
        if (rim > 0)
            easel.Letters.Rim(easel.Canvas, text, middle, size, easel.Palette.LightEdge, rim);
        easel.Letters.Centred(easel.Canvas, text, middle, size, easel.Palette.DarkEdge);
    }
}
