using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>A digit that was found in a whole cell.</summary>
/// <param name="Odds">How likely each digit is there, from 0 to 1, by its index; what is left is for none.</param>
/// <param name="IsBig">Whether it is a big digit and no mark.</param>
/// <param name="X">Its middle, from the cell's left line (0) to the right one (1).</param>
/// <param name="Y">Its middle, from the cell's upper line (0) to the lower one (1).</param>
/// <param name="Line">How likely a line goes through it, if it is a mark.</param>
internal readonly record struct CellFinding(ImmutableArray<float> Odds, bool IsBig, float X, float Y, float Line)
{
    // Parts of the cell: a mark that was found this close to one that was read is the same.
    private const float Same = 0.12f;

    // Of the cell, where no other mark tells.
    private const float UsualHeight = 0.18f;

    /// <summary>The likeliest digit.</summary>
    public Digit Digit => Digit.Of(Odds.IndexOf(Likely) + 1);

    /// <summary>How likely that one is.</summary>
    public float Likely => Odds.Max();

    /// <summary>How likely there is a digit at all.</summary>
    public float Some => Odds.Sum();

    /// <summary>The likeliest of some digits.</summary>
    /// <param name="digits">The digits, one at least.</param>
    public Digit Of(DigitSet digits)
    {
        var odds = Odds;
        return digits.MaxBy(digit => odds[digit.Index]);
    }

    /// <summary>Whether it is where a mark was read.</summary>
    public bool IsAt(MarkReading mark) => Math.Max(Math.Abs(mark.X - X), Math.Abs(mark.Y - Y)) < Same;

    /// <summary>The reading of a mark that was found in no other way. It has no glyph: which ink is its own nobody can tell.</summary>
    /// <param name="digit">What it is.</param>
    /// <param name="height">How high marks are in its cell, as a part of the cell; 0 where nothing tells.</param>
    public MarkReading Reading(Digit digit, float height) =>
        new(digit, X, Y, height > 0 ? height : UsualHeight, Line >= 0.5f, Math.Min(Odds[digit.Index], Siblings.Doubted), GlyphImage.Empty);
}
