using System.Collections.Immutable;

namespace Companion.Sight;

/// <summary>
/// One glyph cut out and brought to a common size: the digit's body fills the height (or, where it is wider than high, the width)
/// but for a margin, its shape keeps its proportions and stands in the middle, ink is 1 and ground is 0 whatever the colours were.
/// </summary>
/// <param name="Ink"><see cref="Side"/> times <see cref="Side"/> values from 0 to 1, row by row.</param>
public sealed record GlyphImage(ImmutableArray<float> Ink)
{
    /// <summary>How much ink there is in each pixel, row by row.</summary>
    /// <exception cref="ArgumentException">There are more or fewer values than pixels.</exception>
    public ImmutableArray<float> Ink { get; } = !Ink.IsDefault && Ink.Length == Side * Side
        ? Ink
        : throw new ArgumentException("There is one value for each pixel.", nameof(Ink));

    /// <summary>Columns, and rows.</summary>
    public const int Side = 24;

    /// <summary>How many columns and rows the body fills: a margin of two stays on each side, for soft edges.</summary>
    public const int Body = 20;

    /// <summary>An image without ink.</summary>
    public static GlyphImage Empty { get; } = new(ImmutableArray.Create(new float[Side * Side]));

    /// <summary>Cuts a glyph out of a plane of ink and brings it to the common size.</summary>
    /// <param name="plane">The ink of the picture, or of a part of it.</param>
    /// <param name="box">
    /// Where the glyph is. It is best a pixel wider than the glyph on each side, for its soft edges: the box is drawn close around the
    /// ink in it, to fractions of a pixel. Ink outside the box does not count, and what is outside the plane is ground.
    /// </param>
    /// <returns>The glyph; <see cref="Empty"/> where the box has no ink to speak of.</returns>
    public static GlyphImage Cut(InkPlane plane, PixelBox box)
    {
        ArgumentNullException.ThrowIfNull(plane);
        return GlyphCut.Of(plane, box);
    }

    /// <summary>Compared by the ink.</summary>
    /// <param name="other">Another one.</param>
    public bool Equals(GlyphImage? other) => other is not null && Ink.AsSpan().SequenceEqual(other.Ink.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var value in Ink)
            hash.Add(value);
        return hash.ToHashCode();
    }
}
