using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Tests.Cues;

/// <summary>
/// Two desks and the presenter work on one cue list at once, each from the last view that reached them, in orders that a seed
/// draws. The list stays one list, and nobody loses what somebody else has done.
/// </summary>
public sealed class TwoDesksTests
{
    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Whoever_changes_a_call_out_has_seen_what_they_change(int seed) => Play(seed, (before, desk, command, after) =>
    {
        foreach (var old in before.CallOuts)
        {
            var now = after[old.Id];
            if (now is not null && Contents(now) == Contents(old))
                continue;

            // Only the one that the command names is another one now, or is gone, and the desk had seen it as it was.
            if (command is SweepCues)
            {
                Assert.Equal((null, CueStage.Done), (now, old.Stage));
                continue;
            }

            Assert.Equal(old.Id, NamedBy(command));
            Assert.Equal(Contents(old), Contents(desk.Seen[old.Id]!));
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Nothing_is_lost_but_by_being_taken_off(int seed) => Play(seed, (before, _, command, after) =>
    {
        var gone = before.CallOuts.Where(old => after[old.Id] is null).Select(old => old.Id).ToList();

        Assert.True(gone.Count == 0 || command is RemoveCue or SweepCues, $"{command} lost {string.Join(' ', gone)}");
        Assert.Equal(after.CallOuts.Count, after.CallOuts.Select(callOut => callOut.Id).Distinct().Count());
        Assert.True(after.Made >= before.Made);
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_move_leaves_the_order_of_all_others_and_ends_where_it_was_meant(int seed) => Play(seed, (before, _, command, after) =>
    {
        if (command is not MoveCue move || before == after)
            return;
        Assert.Equal(
            before.CallOuts.Select(callOut => callOut.Id).Where(id => id != move.Id),
            after.CallOuts.Select(callOut => callOut.Id).Where(id => id != move.Id));
        var place = after.CallOuts.Items.IndexOf(after[move.Id]!);
        Assert.Equal(move.After, place == 0 ? null : after.CallOuts[place - 1].Id);
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void All_desks_come_to_see_the_same_list_which_the_log_leads_to_as_well(int seed)
    {
        var (session, desks) = Play(seed, (_, _, _, _) => { });
        foreach (var desk in desks)
            desk.Look(session.State.Cues);

        Assert.All(desks, desk => Assert.Equal(session.State.Cues, desk.Seen));
        Assert.Equal(session.State.Cues, PlayedSession.Replay(session.Log).Cues);
        Assert.True(desks.All(desk => desk.Done > 10), "Some desk did next to nothing.");
        Assert.True(desks.Sum(desk => desk.Refused) > 0, "Nobody ever met anybody.");
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void What_two_desks_do_to_different_call_outs_comes_to_the_same_in_either_order(int seed)
    {
        var random = new Random(seed);
        var start = PlayedSession.Of(Puzzles.Easy);
        for (var count = 0; count < 6; count++)
            start.Do(new CueText($"Point {count}"));
        var desk = new Desk("either", random);
        desk.Look(start.State.Cues);
        var (one, other) = (desk.Change(1), desk.Change(2));

        var oneFirst = Then(Then(start.State, one), other);
        var otherFirst = Then(Then(start.State, other), one);

        Assert.Equal(oneFirst.Cues, otherFirst.Cues);
    }

    private static SessionState Then(SessionState state, Command command) =>
        Decider.Decide(state, command, PlayedSession.Start).Events.Aggregate(state, Evolver.Evolve);

    private static (PlayedSession Session, IReadOnlyList<Desk> Desks) Play(
        int seed, Action<CueList, Desk, Command, CueList> afterEach)
    {
        var random = new Random(seed);
        var session = PlayedSession.Of(Puzzles.Easy);
        Desk[] desks = [new("first", random), new("second", random), new("presenter", random)];
        for (var step = 0; step < 200; step++)
        {
            var desk = desks[random.Next(desks.Length)];
            if (random.Next(2) == 0)
                desk.Look(session.State.Cues);
            var (before, command) = (session.State.Cues, desk.Any());
            if (session.Try(command).Refusal is null)
                desk.Done++;
            else
                desk.Refused++;
            afterEach(before, desk, command, session.State.Cues);
        }

        Assert.Contains(session.Log, happened => happened is CueReworded);
        return (session, desks);
    }

    private static string Contents(CallOut callOut) => $"{callOut.Stage} {((TextCallOut)callOut).Text}";

    private static int? NamedBy(Command command) => command switch
    {
        RewordCue reword => reword.Id,
        TurnCue turn => turn.Id,
        RemoveCue remove => remove.Id,
        _ => null,
    };

    /// <summary>Somebody at a panel, who knows the list as it was when they looked last.</summary>
    private sealed class Desk(string name, Random random)
    {
        private int _written;

        public CueList Seen { get; private set; } = CueList.Empty;

        public int Done { get; set; }

        public int Refused { get; set; }

        public void Look(CueList cues) => Seen = cues;

        public Command Any()
        {
            if (Seen.CallOuts.Count == 0 || random.Next(5) == 0)
                return new CueText(Words());
            var id = AnyId();
            return random.Next(10) switch
            {
                0 => new RemoveCue(id, Seen[id]!.Version),
                1 when random.Next(8) == 0 => new SweepCues(),
                2 or 3 or 4 => new MoveCue(id, random.Next(4) == 0 ? null : AnyId()),
                _ => Change(id),
            };
        }

        public Command Change(int id) => random.Next(2) == 0
            ? new RewordCue(id, Seen[id]!.Version, Words())
            : new TurnCue(id, Seen[id]!.Version, (CueStage)random.Next(4));

        private int AnyId() => Seen.CallOuts[random.Next(Seen.CallOuts.Count)].Id;

        // No two texts are the same, so that what was overwritten shows.
        private string Words() => $"{name} {++_written}";
    }
}
