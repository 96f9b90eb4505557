using Companion.Engine;

namespace Companion.Sight;

/// <summary>What the presenter said that a glyph is.</summary>
/// <param name="Glyph">The glyph.</param>
/// <param name="Digit">The digit; null where it is none.</param>
public sealed record Lesson(GlyphImage Glyph, Digit? Digit);
