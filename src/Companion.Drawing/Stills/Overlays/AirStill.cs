using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Session.State;
using SkiaSharp;

namespace Companion.Drawing.Stills.Overlays;

/// <summary>What the overlay draws and nothing else, on a ground that shows through: to be laid over a picture of the board.</summary>
/// <param name="picture">What is on air, or null for nothing.</param>
/// <param name="frame">The board's place in the picture.</param>
/// <param name="width">Width in pixels, 240 to 8192.</param>
/// <param name="height">Height in pixels, 240 to 8192.</param>
/// <exception cref="ArgumentOutOfRangeException">The width or the height is out of its range.</exception>
public sealed class AirStill(Picture? picture, Frame frame, int width, int height) : Artwork(width, height)
{
    // A size at which no edge is widened to a pixel; the board is then stretched into its frame, as the page does it.
    private const float Cell = 100;

    /// <inheritdoc/>
    public override string Description => picture?.Caption ?? "";

    internal override bool IsTransparent => true;

    internal override void Paint(SKCanvas canvas, Lettering letters)
    {
        if (picture is null)
            return;
        canvas.Save();
        canvas.Translate((float)(frame.Left * Width), (float)(frame.Top * Height));
        canvas.Scale((float)(frame.Width * Width / (9 * Cell)), (float)(frame.Height * Height / (9 * Cell)));
        new PicturePainter(canvas, letters, Palette.Standard).Paint(picture.Shapes, new(0, 0, Cell));
        canvas.Restore();
        if (picture.Caption.Length > 0)
            new CaptionPainter(canvas, letters, Palette.Standard, new(Width, Height)).Paint(picture.Caption, frame);
    }
}
