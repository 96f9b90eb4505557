namespace Companion.Sight;

/// <summary>An upright box in pixels from the upper left corner; the first pixel reaches from 0 to 1.</summary>
/// <param name="Left">Its left edge.</param>
/// <param name="Top">Its upper edge.</param>
/// <param name="Right">Its right edge, not less than the left one.</param>
/// <param name="Bottom">Its lower edge, not less than the upper one.</param>
public readonly record struct PixelBox(float Left, float Top, float Right, float Bottom)
{
    /// <summary>From edge to edge.</summary>
    public float Width => Right - Left;

    /// <summary>From edge to edge.</summary>
    public float Height => Bottom - Top;
}
