using Companion.Engine;
using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>Reads grids by their lines and their digits' shapes, and remembers for this run of the companion what it was taught.</summary>
internal sealed class ScreenReader : IScreenReader
{
    private readonly Lock _lock = new();
    private volatile Lessons _lessons = Lessons.None;

    /// <inheritdoc/>
    public GridPlace? Find(Frame frame) => GridFinder.Find(frame, isScreen: true);

    /// <inheritdoc/>
    public BoardReading Read(Frame frame, GridPlace place) => BoardReader.Read(frame, place, GlyphReader.Standard, _lessons);

    /// <inheritdoc/>
    public void Teach(GlyphImage glyph, Digit digit)
    {
        lock (_lock)
            _lessons = _lessons.Add(glyph, digit);
    }
}
