using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Paints the shapes of a picture over a board, each with its edges and each text on its plate.</summary>
internal sealed class PicturePainter(SKCanvas canvas, Lettering letters, Palette palette)
{
    // Proportions in cells. The edges are never thinner than a pixel.
    private const double Edge = 0.018;

    internal void Paint(IEnumerable<Shape> shapes, BoardFrame frame, BoardLetters? sizes = null)
    {
        using var brush = new EdgedBrush(canvas, palette, Math.Max(1, frame.Length(Edge)));
        foreach (var shape in shapes)
            Paint(shape, new(brush, letters, palette, frame, sizes ?? BoardLetters.Usual));
    }

    private static void Paint(Shape shape, Easel easel)
    {
        switch (shape)
        {
            case HouseShape house:
                HousePainter.Paint(house, easel);
                break;
            case CellShape cell:
                CellPainter.Paint(cell, easel);
                break;
            case GroupShape group:
                GroupPainter.Paint(group, easel);
                break;
            case LinkShape link:
                LinkPainter.Paint(link, easel);
                break;
            case MarkShape mark:
                CandidatePainter.Paint(mark, easel);
                break;
            case SlashShape slash:
                CandidatePainter.Paint(slash, easel);
                break;
            case LozengeShape lozenge:
                LozengePainter.Paint(lozenge, easel);
                break;
            case CalledShape called:
                CalledPainter.Paint(called, easel);
                break;
            default:
                throw new ArgumentException($"No painter knows a {shape.GetType().Name}.", nameof(shape));
        }
    }
}
