using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A cell that viewers call: a bracket in each corner, and a plate with their number at its foot.</summary>
internal static class CalledPainter
{
    private const double Inset = 0.1;
    private const double Arm = 0.26;
    private const double Width = 0.06;
    private const double PlateHeight = 0.24;
    private const double Letter = 0.21;
    private const double LetterWidth = 0.13;

    internal static void Paint(CalledShape called, Easel easel)
    {
        using var brackets = Brackets(called, easel.Frame);
        easel.Brush.Line(brackets, easel.Frame.Length(Width), easel.Palette.Called);
        PaintPlate(called, easel);
    }

    private static SKPath Brackets(CalledShape called, BoardFrame frame)
    {
        using var builder = new SKPathBuilder();
        foreach (var (x, towards) in Sides(called.X))
        {
            foreach (var (y, down) in Sides(called.Y))
            {
                builder.MoveTo(frame.Point(x + towards * Arm, y));
                builder.LineTo(frame.Point(x, y));
                builder.LineTo(frame.Point(x, y + down * Arm));
            }
        }

        return builder.Detach();
    }

    private static (double At, int Inward)[] Sides(double from) => [(from + Inset, 1), (from + 1 - Inset, -1)];

    private static void PaintPlate(CalledShape called, Easel easel)
    {
        var (frame, palette) = (easel.Frame, easel.Palette);
        var width = LetterWidth * (called.Count.Length + 1);
        var (middle, y) = (called.X + 0.5, called.Y + 1 - Inset);
        using var builder = new SKPathBuilder();
        builder.AddRect(frame.Rect(middle - width / 2, y - PlateHeight / 2, width, PlateHeight));
        using var plate = builder.Detach();
        easel.Brush.Fill(plate, palette.Called);
        easel.Letters.Centred(easel.Canvas, called.Count, frame.Point(middle, y), frame.Length(Letter), palette.InkOn(palette.Called));
    }
}
