using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Live.Loop;
using Companion.Server.Settings;
using Companion.Session;
using Companion.Session.Audience;
using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Proving;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Tests.Wire;

/// <summary>Sessions in which things are done at random, right and wrong ones, the same for the same seed.</summary>
internal static class SomeSessions
{
    private static readonly string[] Puzzles = [Grids.EssayOne, Grids.Textbook, Grids.PrologManual, Demo.Load().Grid];

    public static Voice Voice { get; } = new(ShippedFiles.Wording(Engine.Rules.Ladder.Whole));

    /// <summary>A state as viewers see it who are not behind.</summary>
    public static AudienceView AudienceAtOnce(SessionState state)
    {
        var feed = new AudienceFeed(new() { DelaySeconds = 0 }, AudienceDoor.Open);
        feed.Show(state, DateTimeOffset.UnixEpoch);
        return feed.At(DateTimeOffset.UnixEpoch);
    }

    /// <summary>The session after each step, scanned.</summary>
    public static IEnumerable<Snapshot> Snapshots(int seed, int steps)
    {
        var random = new Random(seed);
        var clock = DateTimeOffset.UnixEpoch;
        var state = Do(SessionState.Initial, new LoadPuzzle(Puzzles[random.Next(Puzzles.Length)], "A title", "A setter", ""), clock);
        state = Do(state, new FeatureRules(new([new(new("xy-wing")), new(new("naked-pair")), new(new("pointing"))])), clock);
        ScanResult? scan = null;
        Outlook? outlook = null;
        for (var step = 0; step < steps; step++)
        {
            scan = Scan.Of(state, Ladder.Standard, scan, CancellationToken.None);
            outlook = Outlook.Of(state, Ladder.Standard, outlook, CancellationToken.None);
            yield return new(state, scan) { Outlook = outlook };
            clock += TimeSpan.FromSeconds(1);
            state = Attribute(Do(state, Command(random, state, scan), clock), clock);
        }
    }

    private static SessionState Attribute(SessionState state, DateTimeOffset now)
    {
        var prover = new Prover(Ladder.Standard);
        return Due.Of(state).Aggregate(state, (state, claim) =>
            Do(state, new AttributeEntry(claim.Step.Number, prover.Prove(state, claim, CancellationToken.None)), now));
    }

    private static SessionState Do(SessionState state, Command command, DateTimeOffset now) =>
        Decider.Decide(state, command, now).Events.Aggregate(state, Evolver.Evolve);

    private static Command Command(Random random, SessionState state, ScanResult scan)
    {
        var cell = Cell.At(random.Next(Cell.Count));
        var digit = Digit.Of(random.Next(9) + 1);
        var solution = state.Grid.Puzzle!.Solution;

        // A wrong digit soon leaves nothing to show; it is found and taken back.
        if (scan.Open.IsEmpty && random.Next(2) == 0)
            return new Undo();
        return random.Next(20) switch
        {
            0 => new PlaceDigit(cell, digit),
            1 or 2 or 3 => new PlaceDigit(cell, solution[cell]),
            4 => new ToggleCellMark(CellSet.Of(cell), digit),
            5 => new ToggleBlockMark(CellSet.Of(cell), solution[cell]),
            6 => new ToggleStrike(CellSet.Of(cell), digit),
            7 => new Undo(),
            8 => new SettleMarks(),
            9 or 10 when scan.Open.Length > 0 => new StandBy(scan.Open[random.Next(scan.Open.Length)].Deduction),
            11 => new ClearAir(),
            12 => new EraseCells(CellSet.Of(cell)),
            13 => new CueText($"Talking point {random.Next(1000)} of a co-host"),
            14 when scan.Open.Length > 0 =>
                new CueDeduction(scan.Open[random.Next(scan.Open.Length)].Deduction, (Grade)random.Next(1, 5)),
            16 => new NoteStep(CandidateSet.Of(new Candidate(cell, digit)), CandidateSet.Empty, $"Note {random.Next(1000)} of a co-host"),
            15 => new TakeCue(random.Next(1, 9), 1),
            _ => new NextGrade(),
        };
    }
}
