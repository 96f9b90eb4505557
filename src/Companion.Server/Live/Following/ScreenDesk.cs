using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Companion.Session.Commands;
using Companion.Session.Following;
using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>
/// Follows the grid on the presenter's screen, for one page at a time: what changes there is entered by the session's loop as if it
/// were typed. The last picture is kept in memory while its page is there and follows, and nothing of any in another place.
/// </summary>
internal sealed class ScreenDesk(SessionLoop session, IScreenReader reader, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim _reading = new(1);
    private volatile Entry? _current;

    /// <summary>A page begins to follow; one that followed before is told to stop.</summary>
    /// <param name="page">A word by which the page is known, of its own choice.</param>
    /// <param name="withMarks">Whether marks are followed, or digits alone.</param>
    public void Start(string page, bool withMarks) => _current = new(page, new(reader, clock, withMarks), reader.Watch());

    /// <summary>A page ends following; nothing is remembered of what it showed.</summary>
    /// <param name="page">The page.</param>
    public void Stop(string page)
    {
        if (_current is { } current && current.Page == page)
            Interlocked.CompareExchange(ref _current, null, current);
    }

    /// <summary>
    /// Forgets the last picture, as is due when a page of the presenter's has gone: one that comes back goes on, and has its next picture
    /// read as a whole.
    /// </summary>
    public void Forget()
    {
        _current?.Picture.Forget();
        _current?.Grid.Forget();
    }

    /// <summary>Whether this page follows the screen.</summary>
    /// <param name="page">The page.</param>
    public bool Follows(string page) => _current?.Page == page;

    /// <summary>Looks for a grid in a whole picture.</summary>
    /// <param name="frame">The picture.</param>
    /// <returns>Where it lies, or null; and whether it was looked for, which it is not while another picture is read.</returns>
    public async Task<(bool IsDone, GridPlace? Place)> Find(Frame frame)
    {
        if (!await _reading.WaitAsync(TimeSpan.FromSeconds(1)))
            return default;
        try
        {
            return (true, reader.Find(frame));
        }
        finally
        {
            _reading.Release();
        }
    }

    /// <summary>Puts together what a page sends.</summary>
    /// <param name="page">The page.</param>
    /// <param name="sent">What it sent.</param>
    /// <returns>The whole picture; null where the page does not follow, or has to send all of it.</returns>
    /// <exception cref="FormatException">This is no picture.</exception>
    public Frame? Whole(string page, SentPicture sent) => _current is { } current && current.Page == page ? current.Picture.Take(sent) : null;

    /// <summary>Looks at the grid, and enters what has changed.</summary>
    /// <param name="page">The page whose picture it is.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="place">Where the grid lies in it.</param>
    /// <returns>What the page is told; null while another picture is read, or where the page does not follow any more.</returns>
    public async Task<ScreenWire?> Look(string page, Frame frame, GridPlace place)
    {
        if (_current is not { } current || current.Page != page || !await _reading.WaitAsync(0))
            return null;
        try
        {
            var reading = current.Grid.Read(frame, place);
            var reply = await session.AskAll(AccessRole.Presenter, now => current == _current ? current.Shown.Take(reading, now) : []);
            return current == _current ? current.Shown.View(session.Current, reply.Refusal) : null;
        }
        finally
        {
            _reading.Release();
        }
    }

    /// <summary>The presenter says what stands in a cell that was held back.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="content">What stands there; null for what was read.</param>
    /// <exception cref="FormatException">No screen is followed.</exception>
    public void Say(Cell cell, CellContent? content) => Followed.Say(cell, content);

    /// <summary>The command that loads the puzzle on the screen.</summary>
    /// <exception cref="FormatException">No screen is followed, or no other puzzle is on it.</exception>
    public LoadPuzzle Load() => new(
        Followed.OtherPuzzle ?? throw new FormatException("The screen shows no other puzzle now: look at it again."), "", "", "");

    /// <summary>The entries that make the session what is on the screen.</summary>
    /// <param name="now">The session.</param>
    /// <exception cref="FormatException">No screen is followed.</exception>
    public IReadOnlyList<Command> TakeScreen(Snapshot now) => Followed.TakeScreen(now);

    /// <inheritdoc/>
    public void Dispose() => _reading.Dispose();

    private Shown Followed => _current?.Shown ?? throw new FormatException("No screen is followed now: begin with Follow my screen.");

    private sealed record Entry(string Page, Shown Shown, IWatchedGrid Grid)
    {
        public LastPicture Picture { get; } = new();
    }
}
