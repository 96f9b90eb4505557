using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Paints a board with the picture over it.</summary>
internal sealed class ScenePainter(SKCanvas canvas, Lettering letters, Palette palette, BoardColours colours)
{
    internal void Paint(IReadOnlyList<StageCell> cells, Picture? picture, BoardFrame frame, BoardLetters? sizes = null)
    {
        new BoardPainter(canvas, letters, colours, frame, sizes).Paint(cells, CoveredBy(picture));
        if (picture is not null)
            new PicturePainter(canvas, letters, palette).Paint(picture.Shapes, frame, sizes);
    }

    // Marks that look out from under a lozenge's corners would be read with its digit.
    private static CellSet CoveredBy(Picture? picture) => picture is null
        ? CellSet.Empty
        : CellSet.Of([.. picture.Shapes.OfType<LozengeShape>().Select(its => Cell.Of(1 + (int)its.Y, 1 + (int)its.X))]);
}
