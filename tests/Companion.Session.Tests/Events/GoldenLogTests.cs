using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Session.Asks;
using Companion.Session.Audience;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Ladders;
using Companion.Session.Recording;
using Companion.Session.State;
using Companion.Session.Tests.Cues;

namespace Companion.Session.Tests.Events;

/// <summary>
/// Replays <c>golden-log.txt</c>, an event a line: kind, blank, body. It is never edited; a new kind of event is added at the end of its
/// first show, before <c>show-begun</c>.
/// </summary>
public sealed class GoldenLogTests
{
    private static readonly StoredEvent[] Stored = [.. File
        .ReadLines(Path.Combine(Repository.Root, "tests", "Companion.Session.Tests", "Events", "golden-log.txt"))
        .Select(line => line.Split(' ', 2))
        .Select(parts => new StoredEvent(parts[0], parts[1]))];

    [Fact]
    public void It_leads_to_the_state_that_it_led_to_when_it_was_written()
    {
        var state = PlayedSession.Replay(Stored.Select(EventText.Read).TakeWhile(happened => happened is not ShowBegun));

        Assert.Equal(
            new Credit("Lanterns, No. 12", "made by the companion's own generator", "https://example.org/12"), state.Grid.Credit);
        Assert.Equal(CandidateSet.Parse("r3c2=6 r3c8=5"), state.Grid.Placed);
        Assert.Equal(CandidateSet.Parse("r1c3=1 r1c3=3"), state.Grid.CellMarks);
        Assert.Equal(CandidateSet.Parse("r2c8=1"), state.Grid.Struck);
        Assert.Equal(
            new BlockMark(House.Block(1), Digit.Of(9), CellSet.Of(Cell.Parse("r2c1"), Cell.Parse("r2c3")), true),
            Assert.Single(state.Grid.BlockMarks));
        Assert.Equal(
            "claiming 9 locked r2c1 r2c3 in r2 removes r3c2=9 r3c3=9", Assert.Single(state.Used).Deduction.ToString());
        Assert.Equal((Grade.Why, 0), (state.OnAir?.Grade, state.CalledOnAir.Count));
        Assert.Equal([new(Cell.Parse("r3c2"), 5), new(Cell.Parse("r9c9"), 1)], state.CalledStandby.Items);
        Assert.Equal(new Frame(0.25, 0.1, 0.45, 0.8), state.Scenes["close"]);
        Assert.Equal((true, "close"), (state.CoHostMayAir, state.ShownFrame));
        Assert.Equal(
            """
            2 listed "Say who set it, and when." v3
            1 done claiming r2c1 r2c3 as far as why v5
            """,
            CueDrawing.Of(state.Cues));
        Assert.Equal([1, 11, 4], state.Attributions.Select(attributed => attributed.Entry));
        Assert.Equal("hidden-single", Assert.IsType<Attribution.Proved>(state.Attributions[0].Attribution).Hardest.Value);
        Assert.Equal(new Attribution.NotProved(new("naked-pair")), state.Attributions[1].Attribution);
        Assert.Equal("naked-single", Assert.IsType<Attribution.Proved>(state.Attributions[2].Attribution).AtOnce?.Rule.Value);
        Assert.Equal(new AskRules(new(true, Grade.What, true), new(12, 9.5, 15.25), "moss", ShowsEnded: 1) { Door = AudienceDoor.ByLink }, state.Asks);
        Assert.Equal(new LadderCut(new("xy-wing"), new([new("fish", false), new("uniqueness", false)])), state.LadderCut);
        Assert.Equal([new Feature(new("xy-wing")), new Feature(new("swordfish"), Timing.Early)], state.Plan.Featured.Items);
        Assert.Equal((RecordingPhase.Stopped, true), (state.Recording.Phase, state.IsOver));
        Assert.Equal([10.0, 10.0], state.Recording.Runs.Select(run => (run.To - run.From)!.Value.TotalSeconds));
        Assert.Equal(["Slowly: this is the first one.", "Say who set it, “Lanterns”."], state.Notes.Notes.Select(note => note.Text));
    }

    [Fact]
    public void Its_second_show_has_nothing_of_the_first()
    {
        var state = PlayedSession.Replay(Stored.Select(EventText.Read));

        Assert.Equal(
            SessionState.Initial with
            {
                Sequence = Stored.Length,
                Show = Stored.Length,
                ShowTitle = "Signal station, second evening",
                Entries = 11,
                Loadings = 1,
            },
            state);
    }

    [Fact]
    public void It_is_written_as_it_was() => Assert.Equal(Stored, Stored.Select(EventText.Read).Select(EventText.Write));

    [Fact]
    public void It_holds_every_kind_of_event() => Assert.Equal(
        typeof(Event).Assembly.GetTypes().Where(type => type.BaseType == typeof(Event)).Select(type => type.Name).Order(),
        Stored.Select(EventText.Read).Select(happened => happened.GetType().Name).Distinct().Order());
}
