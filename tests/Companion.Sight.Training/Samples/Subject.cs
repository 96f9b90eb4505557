using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>What is to be drawn for a sample.</summary>
/// <param name="Class">Its class, as in <see cref="GlyphSample"/>.</param>
/// <param name="Family">The family it is drawn in; empty for a plain shape.</param>
/// <param name="Bounds">Where its ink is, in pixels.</param>
/// <param name="Paint">Draws it.</param>
/// <param name="MayBeStruck">Whether it stays what it is with a line through it.</param>
/// <param name="Neighbour">What may stand beside it in a row of marks; null where nothing may.</param>
internal sealed record Subject(
    int Class, string Family, SKRect Bounds, Action<SKCanvas, SKPaint> Paint, bool MayBeStruck = true, Subject? Neighbour = null)
{
    /// <summary>A filled outline.</summary>
    public static Subject Of(int kind, string family, SKPath path) =>
        new(kind, family, path.TightBounds, (canvas, paint) => canvas.DrawPath(path, paint));
}
