using Companion.Engine;
using Companion.Server.Live.Following;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>Reads whatever the test has prepared, and writes down what it is taught.</summary>
internal sealed class PreparedReader : IScreenReader, IWatchedGrid
{
    public BoardReading Reading { get; set; } = null!;

    public GridPlace? Place { get; set; }

    /// <summary>Where it was to read last.</summary>
    public GridPlace? ReadAt { get; private set; }

    /// <summary>The picture that it was to read last.</summary>
    public Frame? Seen { get; private set; }

    public List<(GlyphImage Glyph, int Digit)> Taught { get; } = [];

    public GridPlace? Find(Frame frame) => Place;

    /// <summary>How often it was told to forget the last picture.</summary>
    public int Forgotten { get; private set; }

    public IWatchedGrid Watch() => this;

    public void Forget() => Forgotten++;

    public BoardReading Read(Frame frame, GridPlace place)
    {
        (ReadAt, Seen) = (place, frame);
        return Reading;
    }

    public void Teach(GlyphImage glyph, Digit digit) => Taught.Add((glyph, digit.Value));
}
