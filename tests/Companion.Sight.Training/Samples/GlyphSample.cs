namespace Companion.Sight.Samples;

/// <summary>A glyph as it may be cut out of a frame, and what it is.</summary>
/// <param name="Image">The glyph.</param>
/// <param name="Class">0 to 8 for the digits 1 to 9, or <see cref="NoDigit"/>.</param>
/// <param name="Family">The family it was drawn in.</param>
internal sealed record GlyphSample(GlyphImage Image, int Class, string Family)
{
    /// <summary>The class of what is no digit.</summary>
    public const int NoDigit = 9;

    /// <summary>The number of classes.</summary>
    public const int Classes = 10;
}
