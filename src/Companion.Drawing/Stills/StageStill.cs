using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>The stage: the board on a ground of its own, a picture over it, and the words beside or below.</summary>
/// <param name="view">The board and its credit; its hint on air is drawn only if its picture is given.</param>
/// <param name="picture">What to draw on the board, or null for nothing.</param>
/// <param name="options">Size and theme.</param>
public sealed class StageStill(StageView view, Picture? picture, StillOptions options) : Artwork(options.Width, options.Height)
{
    /// <inheritdoc/>
    public override string Description => string.Join(". ", new[] { view.Credit.Title, picture?.Caption ?? "" }.Where(words => words.Length > 0));

    internal override void Paint(SKCanvas canvas, Lettering letters) =>
        new StagePainter(canvas, letters, Palette.Standard, options).Paint(view, picture);
}
