using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
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
        new ScenePainter(canvas, letters, palette, colours).Paint(view.Cells, picture, layout.Board);
        new WordsPainter(canvas, letters, colours, shapes, layout).Paint(view.Credit, picture);
    }
}
