using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Companion.Session.Commands;
using Companion.Session.Following;
using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>One page that follows a screen, from its start to its end: what it was shown so far. One look or word at a time.</summary>
/// <param name="reader">Reads grids and learns glyphs.</param>
/// <param name="clock">The clock.</param>
/// <param name="withMarks">Whether marks are followed, or digits alone.</param>
internal sealed class Shown(IScreenReader reader, TimeProvider clock, bool withMarks)
{
    private readonly Lock _lock = new();
    private Follower _follower = new() { WithMarks = withMarks };
    private BoardReading? _reading;
    private bool _hasCandidatePlaces;
    private FollowStep? _last;

    /// <summary>The givens of another puzzle on the screen, or null.</summary>
    public string? OtherPuzzle => _last?.OtherPuzzle;

    /// <summary>Takes a reading over, and says what is to be entered. Called at the session's turn.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="now">The session.</param>
    public IReadOnlyList<Command> Take(BoardReading reading, Snapshot now)
    {
        lock (_lock)
        {
            _reading = reading;
            _hasCandidatePlaces = MarkSorting.HasCandidatePlaces(reading) ?? _hasCandidatePlaces;
            var screen = new Screen([.. reading.Cells.Select(cell =>
                new SeenCell(MarkSorting.Content(cell, _hasCandidatePlaces), cell.IsGiven, !cell.IsUnsure)
                {
                    HasDoubtfulMark = cell.Marks.Any(mark => mark.IsDoubtful),
                })]);
            _last = _follower.Look(screen, now.State, clock.GetUtcNow());
            _follower = _last.Next;
            return _last.Commands;
        }
    }

    /// <summary>The presenter says what stands in a cell, which is learned.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="content">What stands there; null for what was read.</param>
    public void Say(Engine.Cell cell, CellContent? content)
    {
        lock (_lock)
        {
            _follower = _follower.Told(cell, content);
            if (_reading is not { } reading)
                return;
            if (content is null)
            {
                // Of a mark without a glyph nobody knows what it looks like.
                foreach (var mark in reading[cell].Marks.Where(mark => mark.Glyph != GlyphImage.Empty))
                    reader.Teach(mark.Glyph, mark.Digit);
            }

            var digit = content is { } said ? said.Digit : reading[cell].Digit;
            if (digit is { } meant && reading[cell].Glyph is { } glyph)
                reader.Teach(glyph, meant);
        }
    }

    /// <summary>The entries that make the session what is on the screen.</summary>
    /// <param name="now">The session.</param>
    public IReadOnlyList<Command> TakeScreen(Snapshot now)
    {
        lock (_lock)
            return _follower.TakeScreen(now.State);
    }

    /// <summary>What the page is told after a look.</summary>
    /// <param name="now">The session.</param>
    /// <param name="refusal">Why something on the screen could not be entered, or null.</param>
    public ScreenWire View(Snapshot now, string? refusal)
    {
        lock (_lock)
            return ScreenWire.Of(_last!, now.State.Grid, refusal);
    }
}
