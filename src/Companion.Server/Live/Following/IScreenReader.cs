using Companion.Engine;
using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>Reads a grid off a picture. Takes a while, and keeps nothing of the picture.</summary>
internal interface IScreenReader
{
    /// <summary>Where a grid lies in a picture, or null where none is found.</summary>
    /// <param name="frame">The picture.</param>
    GridPlace? Find(Frame frame);

    /// <summary>What stands in the grid.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="place">Where the grid lies.</param>
    BoardReading Read(Frame frame, GridPlace place);

    /// <summary>Learns for this show what digit a glyph is.</summary>
    /// <param name="glyph">The glyph.</param>
    /// <param name="digit">The digit.</param>
    void Teach(GlyphImage glyph, Digit digit);
}
