using Companion.Engine;
using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>Reads grids off pictures. Takes a while, and keeps nothing of a picture itself.</summary>
internal interface IScreenReader
{
    /// <summary>Where a grid lies in a picture, or null where none is found.</summary>
    /// <param name="frame">The picture.</param>
    GridPlace? Find(Frame frame);

    /// <summary>Begins to watch a grid, picture by picture.</summary>
    IWatchedGrid Watch();

    /// <summary>Learns for this run of the companion what digit a glyph is.</summary>
    /// <param name="glyph">The glyph.</param>
    /// <param name="digit">The digit.</param>
    void Teach(GlyphImage glyph, Digit digit);
}
