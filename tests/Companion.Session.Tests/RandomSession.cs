using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Asks.Calls;
using Companion.Session.Audience;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Session.Tests;

/// <summary>
/// Sessions as a hasty presenter might play them: sensible, wrong, refused and repeated commands. The seed fixes all.
/// </summary>
internal sealed class RandomSession
{
    private readonly Random _random;
    private readonly PlayedSession _session;

    /// <summary>A player of a session.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="session">The session, with a puzzle loaded.</param>
    public RandomSession(int seed, PlayedSession session) => (_random, _session) = (new(seed), session);

    /// <summary>A session of this many commands after the puzzle is loaded.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="commands">How many.</param>
    /// <param name="afterEach">Looks at the session after each command.</param>
    public static PlayedSession Of(int seed, int commands, Action<PlayedSession>? afterEach = null)
    {
        var play = new RandomSession(seed, PlayedSession.Of(seed % 2 == 0 ? Puzzles.Easy : Puzzles.Hard));
        for (var count = 0; count < commands; count++)
        {
            play._session.Try(play.Any());
            afterEach?.Invoke(play._session);
        }

        return play._session;
    }

    /// <summary>The next command, which may make no sense.</summary>
    public Command Any() => _random.Next(100) switch
    {
        _ when _session.State.Grid.Puzzle is null && _random.Next(2) == 0 => new LoadPuzzle(Puzzles.Hard, "Lanterns", "", ""),
        < 1 => new LoadPuzzle(_random.Next(3) switch { 0 => Puzzles.Easy, 1 => Puzzles.Hard, _ => "no puzzle" }, "", "", ""),
        < 8 => new PlaceDigit(AnyCell(), AnyDigit()),
        < 20 => RightDigit(),
        < 25 => new EraseCells(AnyCells()),
        < 33 => new ToggleBlockMark(AnyCells(), AnyDigit()),
        < 48 => new ToggleCellMark(AnyCells(), AnyDigit()),
        < 54 => new ToggleStrike(AnyCells(), AnyDigit()),
        < 57 => new SettleMarks(),
        < 64 => new Undo(),
        < 68 => new Redo(),
        < 69 => new ClearGrid(),
        < 79 => AboutSomethingOpen(),
        < 83 => new NextGrade(),
        < 87 => AboutCues(),
        < 90 => new PreviousGrade(),
        < 91 => new ClearAir(),
        < 92 => new StandDown(),
        < 94 => new AllowCoHostOnAir(_random.Next(2) == 0),
        < 96 => new PlaceFrame(AnyScene(), new(_random.NextDouble(), 0.1, _random.NextDouble(), 0.5)),
        < 97 => new ForgetScene(AnyScene()),
        < 98 => new ShowFrame(_random.Next(3) == 0 ? null : AnyScene()),
        _ => AboutSettings(),
    };

    private Command AboutCues()
    {
        var (id, version) = (_random.Next(1, 6), _random.Next(1, 4));
        return _random.Next(9) switch
        {
            0 or 1 => new CueText($"Talking point {_random.Next(5)}"),
            2 => new RewordCue(id, version, $"Talking point {_random.Next(5)}"),
            3 => new RegradeCue(id, version, (Grade)_random.Next(1, 5)),
            4 => new MoveCue(id, _random.Next(3) == 0 ? null : _random.Next(1, 6)),
            5 => new TurnCue(id, version, (CueStage)_random.Next(4)),
            6 => new TakeCue(id, version),
            7 => new RemoveCue(id, version),
            _ => new SweepCues(),
        };
    }

    private Command AboutSettings() => _random.Next(14) switch
    {
        13 => AboutShows(),
        12 or 11 => AboutRecording(),
        10 => new NoteStep(CandidateSet.Of(new Candidate(AnyCell(), AnyDigit())), CandidateSet.Empty, _random.Next(3) == 0 ? "" : "Slowly"),
        9 => new FeatureRules(new([new(new("xy-wing"), (Timing)_random.Next(2))])),
        8 when _random.Next(2) == 0 => new NoteFoundFirst(_random.Next(1, 3), new([new(AnyCell(), 5)])),
        8 => new StandByCalls(new([.. AnyCells().Select(cell => new CellCalls(cell, _random.Next(0, 40), 0, 0, null, null))])),
        7 => new SetAudienceDoor((AudienceDoor)_random.Next(-1, 4)),
        0 => new LimitAsks(new(_random.Next(4) > 0, (Grade)_random.Next(0, 6), _random.Next(2) == 0)),
        1 => new SetDelay(new(_random.Next(-5, 70), _random.Next(5), _random.Next(70))),
        2 => new ShowDelayCode(_random.Next(3) == 0 ? "no code!" : "kite"),
        3 => new StopLadder(_random.Next(2) == 0 ? null : new("xy-wing")),
        4 => new SwitchFamily(_random.Next(2) == 0 ? "fish" : "uniqueness", _random.Next(2) == 0),
        5 => new HideDelayCode(),
        _ => new EndShow(),
    };

    private Command AboutShows() => _random.Next(3) switch
    {
        0 => new BeginShow(_random.Next(2) == 0 ? "" : "Signal station"),
        1 => new BeginShow("two\nlines"),
        _ => new ReopenShow("Once more", new([.. _session.Log.Skip(_session.Log.ToList().FindLastIndex(each => each is ShowBegun) is var at and > 0 ? at : 0)])),
    };

    private Command AboutRecording() => _random.Next(5) switch
    {
        0 or 1 => new StartRecording(),
        2 => new PauseRecording(),
        3 => new ResumeRecording(),
        _ => new StopRecording(),
    };

    private Cell AnyCell() => Cell.At(_random.Next(Cell.Count));

    private Digit AnyDigit() => Digit.Of(_random.Next(1, 10));

    private string AnyScene() => _random.Next(2) == 0 ? "main" : "close";

    // One to three cells of a block, as presenters choose them.
    private CellSet AnyCells()
    {
        var block = House.Block(_random.Next(1, 10));
        return CellSet.Of([.. _random.GetItems(block.Cells.ToArray(), _random.Next(1, 4))]);
    }

    private PlaceDigit RightDigit()
    {
        var cell = AnyCell();
        return new(cell, _session.State.Grid.Puzzle?.Solution[cell] ?? AnyDigit());
    }

    private Command AboutSomethingOpen()
    {
        var open = Scan.Of(_session.State, Ladder.Standard, null).Open;
        if (open.IsEmpty)
            return new ClearAir();
        var deduction = open[_random.Next(open.Length)].Deduction;
        return _random.Next(6) switch
        {
            0 or 1 => new MarkUsed(deduction),
            2 => new CueDeduction(deduction, (Grade)_random.Next(1, 5)),
            _ => new StandBy(deduction),
        };
    }
}
