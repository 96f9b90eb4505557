using Companion.Drawing.Colours;

namespace Companion.Drawing.Stills;

/// <summary>How a still is to come out.</summary>
public sealed record StillOptions
{
    /// <summary>The smallest width and height.</summary>
    public const int Smallest = 240;

    /// <summary>The greatest width and height.</summary>
    public const int Greatest = 8192;

    /// <summary>Makes the options.</summary>
    /// <param name="width">Width in pixels, 240 to 8192.</param>
    /// <param name="height">Height in pixels, 240 to 8192.</param>
    /// <param name="theme">Light or dark.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is out of its range.</exception>
    public StillOptions(int width, int height, Theme theme)
    {
        Check(width, height);
        (Width, Height, Theme) = (width, height, theme);
    }

    /// <summary>Width in pixels.</summary>
    public int Width { get; }

    /// <summary>Height in pixels.</summary>
    public int Height { get; }

    /// <summary>Light or dark.</summary>
    public Theme Theme { get; }

    internal static void Check(int width, int height)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, Smallest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, Greatest);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, Smallest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(height, Greatest);
    }
}
