using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Planning;
using Companion.Session.Proving;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Session.Tests;

/// <summary>
/// A session that is played command by command, as the server plays it, with a clock that ticks a second a command.
/// </summary>
internal sealed class PlayedSession
{
    private readonly List<Event> _log = [];

    /// <summary>The time of the first command.</summary>
    public static DateTimeOffset Start { get; } = new(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);

    public SessionState State { get; private set; } = SessionState.Initial;

    /// <summary>The last scan, if any was asked for.</summary>
    public ScanResult? Scanned { get; private set; }

    /// <summary>The last outlook on the featured rules, if any was asked for.</summary>
    public Outlook? LookedAhead { get; private set; }

    public IReadOnlyList<Event> Log => _log;

    public DateTimeOffset Now { get; private set; } = Start;

    /// <summary>A session with a puzzle loaded.</summary>
    public static PlayedSession Of(string grid) => new PlayedSession().Do(new LoadPuzzle(grid, "Title", "Setter", ""));

    /// <summary>What comes of a command, refused or not.</summary>
    public Decision Try(Command command)
    {
        var decision = Decider.Decide(State, command, Now);
        Now += TimeSpan.FromSeconds(1);
        foreach (var happened in decision.Events)
        {
            _log.Add(happened);
            State = Evolver.Evolve(State, happened);
        }

        return decision;
    }

    /// <summary>Commands that must be taken.</summary>
    public PlayedSession Do(params Command[] commands)
    {
        foreach (var command in commands)
            Assert.Null(Try(command).Refusal);
        return this;
    }

    /// <summary>The refusal of a command that must be refused.</summary>
    public string Refused(Command command)
    {
        var before = State;
        var decision = Try(command);
        Assert.NotNull(decision.Refusal);
        Assert.Same(before, State);
        return decision.Refusal;
    }

    public PlayedSession Place(string cell, int digit) => Do(new PlaceDigit(Cell.Parse(cell), Digit.Of(digit)));

    public PlayedSession Erase(string cells) => Do(new EraseCells(Cells(cells)));

    public PlayedSession Block(string cells, int digit) => Do(new ToggleBlockMark(Cells(cells), Digit.Of(digit)));

    public PlayedSession Strike(string cells, int digit) => Do(new ToggleStrike(Cells(cells), Digit.Of(digit)));

    /// <summary>
    /// Writes, or takes back, these digits one by one in the lists of these cells; the lists are being written then.
    /// </summary>
    public PlayedSession List(string cells, string digits) =>
        Do([.. DigitSet.Parse(digits).Select(digit => new ToggleCellMark(Cells(cells), digit))]);

    public PlayedSession Settle() => Do(new SettleMarks());

    public PlayedSession Undo() => Do(new Undo());

    public PlayedSession Redo() => Do(new Redo());

    public ScanResult Scan() => Scanned = Session.Scanning.Scan.Of(State, Ladder.Standard, Scanned);

    public Outlook LookAhead() => LookedAhead = Outlook.Of(State, Ladder.Standard, LookedAhead);

    /// <summary>Attributes the entries that wait for it, the oldest first, as the server does when it is idle.</summary>
    public PlayedSession Attribute(int most = int.MaxValue)
    {
        foreach (var claim in Due.Of(State).Take(most))
            Do(new AttributeEntry(claim.Step.Number, Attribution.Of(claim.Before!, claim.Target, Ladder.Standard)));
        return this;
    }

    public static CellSet Cells(string names) => CellSet.Of([.. names.Split(' ').Select(Cell.Parse)]);

    /// <summary>The state that a log leads to.</summary>
    public static SessionState Replay(IEnumerable<Event> log) => log.Aggregate(SessionState.Initial, Evolver.Evolve);
}
