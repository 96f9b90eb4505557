using Companion.Drawing.Stills;

namespace Companion.Server.CommandLine;

/// <summary>Width and height of a picture, in pixels.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
internal sealed record ImageSize(int Width, int Height)
{
    /// <summary>Reads a size such as <c>1280x720</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <returns>The size, or null where the text is none or a still cannot be as small or as large.</returns>
    public static ImageSize? Read(string text) =>
        text.Split('x') is [var width, var height]
        && int.TryParse(width, out var w) && int.TryParse(height, out var h)
        && IsPossible(w) && IsPossible(h)
            ? new(w, h)
            : null;

    private static bool IsPossible(int pixels) => pixels is >= StillOptions.Smallest and <= StillOptions.Greatest;
}
