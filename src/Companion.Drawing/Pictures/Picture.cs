using System.Collections.Immutable;

namespace Companion.Drawing.Pictures;

/// <summary>An ordered list of shapes, the lowest first, with the words that go below.</summary>
/// <param name="Shapes">The shapes.</param>
/// <param name="Caption">A line of words for the plate under or over the board; never more than the picture's grade gives.</param>
public sealed record Picture(ImmutableArray<Shape> Shapes, string Caption);
