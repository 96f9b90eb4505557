using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Paints a whole still: the ground, the board, the picture over it, and the words beside or below.</summary>
internal sealed class StagePainter(SKCanvas canvas, Lettering letters, Palette palette, StillOptions options)
{
    internal void Paint(StageView view, Picture? picture)
    {
        var colours = palette.Board[options.Theme];
        var layout = StillLayout.Of(options);
        var shapes = new PicturePainter(canvas, letters, palette);

        canvas.Clear(colours.Surround.ToSkia());
        new BoardPainter(canvas, letters, colours, layout.Board).Paint(view.Cells, CoveredBy(picture));
        if (picture is not null)
            shapes.Paint(picture.Shapes, layout.Board);
        new WordsPainter(canvas, letters, colours, shapes, layout).Paint(view.Credit, picture);
    }

    // Marks that look out from under a lozenge's corners would be read with its digit.
    private static CellSet CoveredBy(Picture? picture) => picture is null
        ? CellSet.Empty
        : CellSet.Of([.. picture.Shapes.OfType<LozengeShape>().Select(its => Cell.Of(1 + (int)its.Y, 1 + (int)its.X))]);
}
