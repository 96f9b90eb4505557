using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Makes strips of boards.</summary>
internal static class FigureStrips
{
    private const float InStepSide = 226;
    private const float WithWordsSide = 178;
    private const float Gap = 5;

    /// <summary>A board below a step, with what its shapes mean beside it.</summary>
    internal static Strip InStep(Figure figure, TextPlace place)
    {
        var width = Math.Min(place.Width, FigurePainter.WidthWithLegend(InStepSide));
        return new(
            InStepSide + Gap, (sheet, top) => FigurePainter.PaintWithLegend(sheet, figure, SKRect.Create(place.Left, top, width, InStepSide)))
        {
            Gap = Gap,
        };
    }

    /// <summary>A drawing as wide as the page.</summary>
    internal static Strip OfArtwork(Artwork artwork, SKRect body)
    {
        var scale = body.Width / artwork.Width;
        return new(artwork.Height * scale, (sheet, top) =>
        {
            sheet.Canvas.Save();
            sheet.Canvas.Translate(body.Left, top);
            sheet.Canvas.Scale(scale);
            artwork.Paint(sheet.Canvas, sheet.Letters);
            sheet.Canvas.Restore();
        })
        {
            Gap = Measures.Gap,
        };
    }

    /// <summary>A board with words beside it; both begin at the top.</summary>
    internal static Strip WithWords(FigureWithWords block, Lettering letters, SKRect body)
    {
        var left = body.Left + WithWordsSide + Measures.FigureGap;
        var (lines, height) = (new List<(Strip Line, float Top)>(), 0f);
        foreach (var words in block.Words)
        {
            foreach (var line in TextStrips.Of(letters, words, new(left, body.Right - left)))
            {
                lines.Add((line, height));
                height += line.Height;
            }

            height += Measures.Gap;
        }

        return new(Math.Max(WithWordsSide, height), (sheet, top) =>
        {
            FigurePainter.PaintBoard(sheet, block.Figure, new(body.Left, top), WithWordsSide);
            foreach (var (line, at) in lines)
                line.Paint(sheet, top + at);
        })
        {
            Gap = Measures.Gap,
        };
    }
}
