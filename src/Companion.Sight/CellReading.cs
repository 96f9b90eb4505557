using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight;

/// <summary>What was read in one cell.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Digit">The big digit, or null where there is none.</param>
/// <param name="IsGiven">Whether the digit's colour or weight is that of the givens; null where nothing tells them apart, or without a digit.</param>
/// <param name="Glyph">The image of the big digit, or of a sign as large that is no digit by its look; null where there is none.</param>
/// <param name="Marks">The small digits, from the top left to the bottom right; empty beside a big digit.</param>
/// <param name="Certainty">How sure the reading of the whole cell is, from 0 to 1: that of its least sure part.</param>
public sealed record CellReading(
    Cell Cell, Digit? Digit, bool? IsGiven, GlyphImage? Glyph, ImmutableArray<MarkReading> Marks, float Certainty)
{
    /// <summary>Below this nothing is entered: the presenter is asked.</summary>
    public const float Sure = 0.9f;

    /// <summary>Whether the presenter has to be asked.</summary>
    public bool IsUnsure => Certainty < Sure;
}
