using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>What the painter of a shape has at hand.</summary>
/// <param name="Brush">What draws each with its edges.</param>
/// <param name="Letters">What writes.</param>
/// <param name="Palette">The colours.</param>
/// <param name="Frame">Where the board is.</param>
/// <param name="Sizes">How large its plates and letters are.</param>
internal sealed record Easel(EdgedBrush Brush, Lettering Letters, Palette Palette, BoardFrame Frame, BoardLetters Sizes)
{
    internal SKCanvas Canvas => Brush.Canvas;
}
