namespace Companion.Sight;

/// <summary>Where the grid lies in a frame: the outer corners of its border. On a photograph it need not be a rectangle.</summary>
/// <param name="TopLeft">The corner of r1c1.</param>
/// <param name="TopRight">The corner of r1c9.</param>
/// <param name="BottomRight">The corner of r9c9.</param>
/// <param name="BottomLeft">The corner of r9c1.</param>
public sealed record GridPlace(PixelPoint TopLeft, PixelPoint TopRight, PixelPoint BottomRight, PixelPoint BottomLeft);
