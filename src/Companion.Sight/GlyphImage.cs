using System.Collections.Immutable;

namespace Companion.Sight;

/// <summary>
/// One glyph cut out and brought to a common size: the digit's body fills the height (or, where it is wider than high, the width),
/// its shape keeps its proportions and stands in the middle, ink is 1 and ground is 0 whatever the colours were.
/// </summary>
/// <param name="Ink"><see cref="Side"/> times <see cref="Side"/> values from 0 to 1, row by row.</param>
public sealed record GlyphImage(ImmutableArray<float> Ink)
{
    /// <summary>Columns, and rows.</summary>
    public const int Side = 24;

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
