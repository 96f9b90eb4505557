using Companion.Engine;

namespace Companion.Sight;

/// <summary>A small digit that was read in a cell.</summary>
/// <param name="Digit">The digit.</param>
/// <param name="X">The middle of the mark, from the cell's left edge (0) to its right edge (1).</param>
/// <param name="Y">The middle of the mark, from the cell's upper edge (0) to its lower edge (1).</param>
/// <param name="Height">How high it is, as a part of the cell's height.</param>
/// <param name="IsStruck">Whether a line goes through it.</param>
/// <param name="Certainty">How sure the reading is, from 0 to 1.</param>
/// <param name="Glyph">What was read, so that a correction can be learned; <see cref="GlyphImage.Empty"/> where nobody can tell which ink is its own.</param>
public sealed record MarkReading(Digit Digit, float X, float Y, float Height, bool IsStruck, float Certainty, GlyphImage Glyph)
{
    // What only has nothing to be compared with is surer than this.
    private const float Doubtful = 0.8f;

    /// <summary>Whether something speaks against the reading, as a line that may go through the mark does.</summary>
    public bool IsDoubtful => Certainty < Doubtful;
}
