using Companion.Engine;
using Companion.Server.Live.Following;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>Reads whatever the test has prepared, and writes down what it is taught.</summary>
internal sealed class PreparedReader : IScreenReader
{
    public BoardReading Reading { get; set; } = null!;

    public GridPlace? Place { get; set; }

    /// <summary>Where it was to read last.</summary>
    public GridPlace? ReadAt { get; private set; }

    public List<(GlyphImage Glyph, int Digit)> Taught { get; } = [];

    public GridPlace? Find(Frame frame) => Place;

    public BoardReading Read(Frame frame, GridPlace place)
    {
        ReadAt = place;
        return Reading;
    }

    public void Teach(GlyphImage glyph, Digit digit) => Taught.Add((glyph, digit.Value));
}
