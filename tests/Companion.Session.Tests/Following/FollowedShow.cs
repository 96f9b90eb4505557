using Companion.Engine;
using Companion.Session.Following;
using Companion.Session.State;

namespace Companion.Session.Tests.Following;

/// <summary>
/// A presenter's program, which is a session of its own, and the session that follows its screen. Both play the same puzzle at first.
/// </summary>
internal sealed class FollowedShow
{
    private Follower _follower;

    public FollowedShow(bool withMarks = true, string grid = Puzzles.Easy)
    {
        Program = PlayedSession.Of(grid);
        Session = PlayedSession.Of(grid);
        _follower = new() { WithMarks = withMarks };
        Now = PlayedSession.Start;
    }

    /// <summary>What the presenter enters.</summary>
    public PlayedSession Program { get; }

    /// <summary>What follows.</summary>
    public PlayedSession Session { get; }

    /// <summary>What the last look came to.</summary>
    public FollowStep Last { get; private set; } = null!;

    public DateTimeOffset Now { get; private set; }

    /// <summary>What following has entered since this was asked last: the log of the session without times.</summary>
    public IReadOnlyList<string> Entered()
    {
        var entered = Session.Log.Skip(_told).Select(happened => (happened with { At = default }).ToString()).ToList();
        _told = Session.Log.Count;
        return entered;
    }

    private int _told = 1;

    /// <summary>The screen as a program draws it, with the changes that a test makes to it.</summary>
    public Screen Screen(params (string Cell, Func<SeenCell, SeenCell> Change)[] changes)
    {
        var screen = Of(Program.State.Grid);
        foreach (var (name, change) in changes)
            screen = screen.Each((cell, seen) => cell == Cell.Parse(name) ? change(seen) : seen);
        return screen;
    }

    /// <summary>A screen that shows a grid.</summary>
    public static Screen Of(Grid grid) => new([.. CellSet.All.Select(cell => new SeenCell(
        CellContent.Of(grid, cell), grid.DigitAt(cell) is null ? null : grid.Givens.Contains(cell), IsSure: true))]);

    /// <summary>Looks once and enters what comes of it.</summary>
    public FollowStep Look(Screen? screen = null, double after = 0.1)
    {
        Now += TimeSpan.FromSeconds(after);
        Last = _follower.Look(screen ?? Screen(), Session.State, Now);
        _follower = Last.Next;
        foreach (var command in Last.Commands)
            Session.Try(command);
        return Last;
    }

    /// <summary>Looks until the screen was seen twice.</summary>
    public FollowStep LookTwice(Screen? screen = null)
    {
        Look(screen);
        return Look(screen);
    }

    /// <summary>The presenter says what stands in a cell; 0 for nothing, null for what was read.</summary>
    public void Say(string cell, int? digit) => _follower = _follower.Told(Cell.Parse(cell), digit switch
    {
        null => null,
        0 => default(CellContent),
        { } value => new(Digit.Of(value)),
    });

    /// <summary>The session takes over what is on the screen wherever they are apart.</summary>
    public void TakeScreen()
    {
        foreach (var command in _follower.TakeScreen(Session.State))
            Session.Do(command);
    }

    /// <summary>Sees a digit in a cell.</summary>
    public static Func<SeenCell, SeenCell> Sees(int digit, bool isSure = true) =>
        seen => seen with { Content = new(Digit.Of(digit)), IsSure = isSure };

    /// <summary>Sees nothing in a cell.</summary>
    public static Func<SeenCell, SeenCell> SeesNothing(bool isSure = true) => seen => new(default, null, isSure);
}
