using Companion.Engine.Proofs;
using Companion.Session.Events.Storage;
using Companion.Session.Proving;
using Companion.Session.Views;

namespace Companion.Session.Tests.Proving;

/// <summary>What holds of the proofs of any session, however hastily it is played.</summary>
public sealed class AttributedSessionTests
{
    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void Every_entry_that_can_be_proved_is_attributed_in_the_end_and_each_proof_holds(int seed)
    {
        var session = Play(seed);
        session.Attribute();

        Assert.Empty(Due.Of(session.State));
        Assert.Distinct(session.State.Attributions.Select(attributed => attributed.Entry));
        var byEntry = session.State.Attributions.ToDictionary(attributed => attributed.Entry, attributed => attributed.Attribution);
        var writing = session.State.Writing.IsEmpty ? null : session.State.History.Last;
        foreach (var claim in Claim.Of(session.State).Where(claim => claim.IsProvable && claim.Step != writing))
        {
            if (byEntry[claim.Step.Number] is not Attribution.Proved proved)
                continue;
            var board = claim.Before!;
            foreach (var step in proved.Steps)
            {
                Assert.True(ProofChecker.Check(board, step).Holds, $"{claim.Step.Label}: {step}");
                board = board.Apply(step);
            }

            Assert.True(claim.Target.IsReachedOn(board), claim.Step.Label);
        }
    }

    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void A_replayed_log_has_the_same_proofs(int seed)
    {
        var session = Play(seed);

        Assert.Equal(session.State, PlayedSession.Replay(session.Log.Select(EventText.Write).Select(EventText.Read)));
    }

    [Fact]
    public void The_panel_shows_the_last_entry_that_stands_and_claims_something_and_no_other()
    {
        var kinds = new HashSet<ProofKind>();
        for (var seed = 1; seed <= 6; seed++)
            Play(seed, Look, commands: 70);

        Assert.Equal(Enum.GetValues<ProofKind>(), kinds.Order());

        void Look(PlayedSession session)
        {
            var claim = Claim.Of(session.State).FirstOrDefault(claim => claim.Step.Grid.Loading == session.State.Grid.Loading);
            var shown = PanelViews.Desk(session.State, null, null, ShippedVoice.Voice).Proof;
            Assert.True(shown is null || shown.Entry == claim?.Step.Label, shown?.Entry);
            Assert.Equal(shown?.Kind == ProofKind.Wrong, shown is not null && claim!.IsWrong);
            if (shown is not null)
                kinds.Add(shown.Kind);
        }
    }

    // The companion is idle now and then only, so that proofs come late and some never. Of what Watch says is wrong, most is taken
    // back.
    private static PlayedSession Play(int seed, Action<PlayedSession>? afterEach = null, int commands = 150)
    {
        var count = 0;
        return RandomSession.Of(seed, commands, afterEach: session =>
        {
            if (++count % 7 == 0)
                session.Attribute(most: 2);
            afterEach?.Invoke(session);
            if (count % 30 > 0 && Claim.Of(session.State).FirstOrDefault() is { IsWrong: true })
                session.Undo();
        });
    }
}
