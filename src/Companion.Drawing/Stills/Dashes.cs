using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Lengths of the dashes of a broken line and of the gaps between them, as they are seen, in pixels.</summary>
/// <param name="Dash">A dash, its square ends included.</param>
/// <param name="Gap">A gap.</param>
internal readonly record struct Dashes(float Dash, float Gap)
{
    /// <summary>How many of them a line holds; at least one.</summary>
    internal int CountOn(float length) => Math.Max(1, (int)Math.Round(length / (Dash + Gap), MidpointRounding.AwayFromZero));

    /// <summary>Stretched so that a line of some length holds a whole number of them.</summary>
    internal Dashes FittedTo(float length)
    {
        var scale = length / CountOn(length) / (Dash + Gap);
        return new(Dash * scale, Gap * scale);
    }

    /// <summary>
    /// For a pen with square ends, which lengthen each dash by the width. The line begins in the middle of a gap, and with fitted
    /// dashes it ends there as well.
    /// </summary>
    internal SKPathEffect Effect(float width) => SKPathEffect.CreateDash([Dash - width, Gap + width], Dash + Gap / 2 - width / 2);
}
