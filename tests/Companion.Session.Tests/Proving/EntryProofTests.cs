using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Views;

namespace Companion.Session.Tests.Proving;

public sealed class EntryProofTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    private EntryProof? Shown => PanelViews.Desk(_session.State, null, null, ShippedVoice.Voice).Proof;

    [Fact]
    public void An_entry_is_looked_into_and_then_shown_with_the_steps_by_which_it_follows()
    {
        Assert.Null(Shown);

        _session.Place("r2c2", 6);
        Assert.Equal(("6 in r2c2", ProofKind.Pending, "is being looked into"), Line(Shown));
        Assert.Empty(Shown!.Steps);

        _session.Attribute();
        Assert.Equal(("6 in r2c2", ProofKind.Proved, "follows by a hidden single"), Line(Shown));
        Assert.Equal(
            new ProofStep(
                "hidden single",
                "Hidden single: 6 in block 1 → r2c2 is 6",
                "In block one, six has nowhere left to go but row two column two. So row two column two is six."),
            Assert.Single(Shown!.Steps));
    }

    [Fact]
    public void An_entry_that_the_ladder_does_not_prove_says_how_far_the_ladder_goes()
    {
        _session.Place("r2c2", 6).Do(new AttributeEntry(1, new Attribution.NotProved(new("x-wing"))));

        Assert.Equal(("6 in r2c2", ProofKind.NotProved, "not proved by the ladder up to X-wing"), Line(Shown));
        Assert.Empty(Shown!.Steps);
    }

    [Fact]
    public void A_wrong_entry_and_an_entry_after_one_are_told_without_a_proof()
    {
        _session.Place("r1c1", 5);
        Assert.Equal(("5 in r1c1", ProofKind.Wrong, "disagrees with the only solution, so that nothing proves it: undo it or take it out"), Line(Shown));

        _session.Place("r2c2", 6);
        Assert.Equal(
            ("6 in r2c2", ProofKind.Unsound, "is not proved: the board before it disagrees with the only solution"), Line(Shown));
    }

    [Fact]
    public void The_proof_of_an_entry_that_was_taken_back_is_shown_no_more_and_of_one_made_again_it_is()
    {
        _session.Place("r2c2", 6).Attribute().Place("r3c1", 2).Attribute().Undo();
        Assert.Equal("6 in r2c2", Shown!.Entry);

        _session.Redo();
        Assert.Equal(("2 in r3c1", ProofKind.Proved, "follows by a hidden single"), Line(Shown));
    }

    [Fact]
    public void An_entry_that_claims_nothing_leaves_the_last_one_that_did()
    {
        _session.Place("r2c2", 6).Attribute().Block("r1c1", 4);

        Assert.Equal("6 in r2c2", Shown!.Entry);
    }

    [Fact]
    public void A_puzzle_just_loaded_shows_nothing_of_the_one_before()
    {
        _session.Place("r2c2", 6).Attribute().Do(new LoadPuzzle(Puzzles.Demo, "", "", ""));

        Assert.Null(Shown);
    }

    private static (string Entry, ProofKind Kind, string Text) Line(EntryProof? shown) =>
        (shown!.Entry, shown.Kind, shown.Text);
}
