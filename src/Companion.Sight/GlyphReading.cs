using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight;

/// <summary>What a glyph was read as.</summary>
/// <param name="Digit">The digit; null where it is none: a letter, an arrow, a line, a crumb, a pattern, a pointer.</param>
/// <param name="Certainty">How sure that is, from 0 to 1.</param>
public readonly record struct GlyphReading(Digit? Digit, float Certainty)
{
    /// <summary>How likely each digit is by the glyph's look alone, from 0 to 1, by its index; the default where the look did not tell.</summary>
    public ImmutableArray<float> Odds { get; init; }
}
