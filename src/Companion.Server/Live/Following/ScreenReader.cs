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
    public IWatchedGrid Watch() => new Watched(this);

    /// <inheritdoc/>
    public void Teach(GlyphImage glyph, Digit digit)
    {
        lock (_lock)
            _lessons = _lessons.Add(glyph, digit);
    }

    private sealed class Watched(ScreenReader reader) : IWatchedGrid
    {
        private volatile BoardSight? _sight;

        public BoardReading Read(Frame frame, GridPlace place)
        {
            // Whoever forgets while this is being read lets go of what it was read with.
            var sight = _sight ??= new(GlyphReader.Standard);
            return sight.See(frame, place, reader._lessons);
        }

        public void Forget() => _sight = null;
    }
}
