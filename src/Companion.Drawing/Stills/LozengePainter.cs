using System.Globalization;
using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A digit that follows: a filled lozenge with the digit on it.</summary>
internal static class LozengePainter
{
    // From the middle to the corners, without the edges.
    private const double Reach = 0.399;
    private const double Digit = 0.46;

    internal static void Paint(LozengeShape lozenge, Easel easel)
    {
        var (frame, colour) = (easel.Frame, easel.Palette.Follows);
        using var builder = new SKPathBuilder();
        builder.MoveTo(frame.Point(lozenge.X, lozenge.Y - Reach));
        builder.LineTo(frame.Point(lozenge.X + Reach, lozenge.Y));
        builder.LineTo(frame.Point(lozenge.X, lozenge.Y + Reach));
        builder.LineTo(frame.Point(lozenge.X - Reach, lozenge.Y));
        builder.Close();
        using var form = builder.Detach();
        easel.Brush.Fill(form, colour);
        var text = lozenge.Digit.ToString(CultureInfo.InvariantCulture);
        var middle = frame.Point(lozenge.X, lozenge.Y);
        easel.Letters.Centred(easel.Canvas, text, middle, frame.Length(Digit), easel.Palette.InkOn(colour));
    }
}
