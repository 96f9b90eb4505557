using System.Collections.Immutable;
using Companion.Sight;

namespace Companion.Server.Wire;

/// <summary>Where a grid lies in a picture.</summary>
/// <param name="Corners">Its corners clockwise from the upper left one, x and y of each in pixels; null where none was found.</param>
public sealed record GridWire(ImmutableArray<float>? Corners)
{
    internal static ImmutableArray<float> Numbers(GridPlace place) =>
        [.. new[] { place.TopLeft, place.TopRight, place.BottomRight, place.BottomLeft }.SelectMany(corner => new[] { corner.X, corner.Y })];
}
