using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight;

/// <summary>
/// What the presenter taught in this session: glyphs that were read wrongly, and what they are. The default of a session is
/// <see cref="None"/>; nothing of it is stored.
/// </summary>
/// <param name="Taught">One after the other, the latest last.</param>
public sealed record Lessons(ImmutableArray<Lesson> Taught)
{
    // Chosen on faces of the tuning list, which Weights/README.md gives the figures of: within Reach a glyph is taken for the taught
    // one, unless the network surely tells the two apart; within Touch it is taken for it whatever the network says.
    private const float Reach = 0.2f;
    private const float Touch = 0.1f;

    /// <summary>Nothing was taught yet.</summary>
    public static Lessons None { get; } = new([]);

    /// <summary>These and one more. What was taught of the same glyph before is forgotten.</summary>
    /// <param name="glyph">The glyph.</param>
    /// <param name="digit">What it is; null where it is no digit.</param>
    public Lessons Add(GlyphImage glyph, Digit? digit)
    {
        ArgumentNullException.ThrowIfNull(glyph);
        return new([.. Taught.Where(lesson => lesson.Glyph != glyph), new(glyph, digit)]);
    }

    /// <summary>What a glyph is by what was taught of the nearest one; null where none is near enough.</summary>
    /// <param name="glyph">The glyph.</param>
    /// <param name="reading">What the network reads it as.</param>
    /// <param name="readings">What the network reads the taught ones as, in their order.</param>
    internal GlyphReading? Recall(GlyphImage glyph, GlyphReading reading, ReadOnlySpan<GlyphReading> readings)
    {
        var (nearest, distance) = (-1, Reach);
        for (var index = 0; index < Taught.Length; index++)
            if (GlyphDistance.Between(glyph, Taught[index].Glyph) is var away && away <= distance)
                (nearest, distance) = (index, away);
        if (nearest < 0)
            return null;
        var isAnother = reading.Certainty >= CellReading.Sure && reading.Digit != readings[nearest].Digit;
        return isAnother && distance > Touch ? null : new(Taught[nearest].Digit, 1 - (1 - CellReading.Sure) * distance / Reach);
    }
}
