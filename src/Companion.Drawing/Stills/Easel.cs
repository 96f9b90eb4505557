using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>What the painter of a shape has at hand.</summary>
/// <param name="Brush">What draws each with its edges.</param>
/// <param name="Letters">What writes.</param>
/// <param name="Palette">The colours.</param>
/// <param name="Frame">Where the board is.</param>
/// <param name="Plates">See <see cref="BoardLetters.Plates"/>.</param>
internal sealed record Easel(EdgedBrush Brush, Lettering Letters, Palette Palette, BoardFrame Frame, double Plates)
{
    internal SKCanvas Canvas => Brush.Canvas;
}
