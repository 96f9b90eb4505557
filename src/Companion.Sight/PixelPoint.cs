namespace Companion.Sight;

/// <summary>A point of a frame, in pixels from its upper left corner; the middle of the first pixel is (0.5, 0.5).</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct PixelPoint(float X, float Y);
