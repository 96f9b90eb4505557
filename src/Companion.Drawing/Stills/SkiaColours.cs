using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills;

internal static class SkiaColours
{
    internal static SKColor ToSkia(this Colour colour, byte alpha = 255) => new(colour.Red, colour.Green, colour.Blue, alpha);
}
