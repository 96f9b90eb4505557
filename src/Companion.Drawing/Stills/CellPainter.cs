using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// A cell of the pattern. First role: one thick frame and a square tab. Second role: a frame parted by a dark line in the middle,
/// which makes it a double one, and a round tab. The tab stands on the cell's top left corner, between the candidates of the four
/// cells that meet there.
/// </summary>
internal static class CellPainter
{
    private const double Thick = 0.08;
    private const double Double = 0.1;
    private const double Parting = 0.036;

    // The frame begins a little outside the cell, so that its inner edge keeps clear of the candidates.
    private const double Outside = 0.04;
    private const double Edges = 0.036;

    // Half the width of the tab without its edges.
    private const double Tab = 0.119;
    private const double Letter = 0.215;

    internal static void Paint(CellShape cell, Easel easel)
    {
        var palette = easel.Palette;
        var (colour, width) = cell.IsSecond ? (palette.SecondRole, Double) : (palette.FirstRole, Thick);
        using var builder = new SKPathBuilder();
        var inset = width / 2 + Edges - Outside;
        builder.AddRect(easel.Frame.Rect(cell.X + inset, cell.Y + inset, 1 - 2 * inset, 1 - 2 * inset));
        using var frame = builder.Detach();
        easel.Brush.Line(frame, easel.Frame.Length(width), colour);
        if (cell.IsSecond)
            easel.Brush.Stroke(frame, easel.Frame.Length(Parting), palette.DarkEdge);
        if (cell.Tab.Length > 0)
            PaintTab(cell, colour, easel);
    }

    private static void PaintTab(CellShape cell, Colour colour, Easel easel)
    {
        var (frame, tab) = (easel.Frame, Tab * easel.Sizes.Plates);
        var corner = frame.Point(cell.X, cell.Y);
        using var builder = new SKPathBuilder();
        if (cell.IsSecond)
            builder.AddCircle(corner.X, corner.Y, frame.Length(tab));
        else
            builder.AddRect(frame.Rect(cell.X - tab, cell.Y - tab, 2 * tab, 2 * tab));
        using var plate = builder.Detach();
        easel.Brush.Fill(plate, colour);

        // A blank is a tab without a letter.
        if (easel.Sizes.HasTabLetters && !string.IsNullOrWhiteSpace(cell.Tab))
            easel.Letters.Centred(easel.Canvas, cell.Tab, corner, frame.Length(Letter * easel.Sizes.Plates), easel.Palette.InkOn(colour));
    }
}
