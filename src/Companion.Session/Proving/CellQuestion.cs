using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Proving;

/// <summary>Answers the presenter why a digit is, or cannot be, in a cell.</summary>
public static class CellQuestion
{
    private const string Disagrees = "The board disagrees with the only solution, and from it anything could be proved: Watch says where.";

    /// <summary>The answer. It may take as long as a proof does.</summary>
    /// <param name="state">The state.</param>
    /// <param name="asked">The digit and the cell.</param>
    /// <param name="prove">Proves a target from a board.</param>
    /// <param name="voice">The words.</param>
    public static WhyView Answer(
        SessionState state, Candidate asked, Func<Board, AttributionTarget, Attribution> prove, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(prove);
        ArgumentNullException.ThrowIfNull(voice);
        if (state.Grid.Puzzle is not { } puzzle)
            return Say(asked, "Load a puzzle first.");
        if (state.Grid.Placed.Contains(asked))
            return OfEntry(state, asked, prove, voice);
        if (SeenBoard.Of(state.Grid, state.Writing).Value is not { } seen || !Claim.Agrees(seen, puzzle.Solution))
            return Say(asked, Disagrees);
        var bare = Board.Read(SeenBoard.Draft(state.Grid, state.Writing) with { Removed = CandidateSet.Empty }).Value!;
        var reason = CellReason.Of(seen, bare, puzzle.Solution, asked, prove);
        return reason switch
        {
            CellReason.Goes goes => Say(asked, voice, reason, goes.Board, goes.Attribution),
            CellReason.CannotBe cannotBe => Say(asked, voice, reason, cannotBe.Board, cannotBe.Attribution),
            _ => Say(asked, voice.Wording.Why(reason).Spoken),
        };
    }

    // A digit that the presenter placed is proved from the board before it, as its entry was.
    private static WhyView OfEntry(
        SessionState state, Candidate asked, Func<Board, AttributionTarget, Attribution> prove, Voice voice)
    {
        var entry = Claim.Of(state).First(claim => claim.Target.Places.Contains(asked));
        if (entry.IsWrong)
            return Say(asked, $"{asked.Digit} in {asked.Cell} disagrees with the only solution, so that nothing proves it: undo it or take it out.");
        if (entry.Before is not { } board)
            return Say(asked, "The board before this entry disagreed with the only solution, and from it anything could be proved.");
        var attribution = state.Attributions.LastOrDefault(attributed => attributed.Entry == entry.Step.Number)?.Attribution
            ?? prove(board, entry.Target);
        return Say(asked, voice, new CellReason.Goes(asked, board, attribution), board, attribution);
    }

    private static WhyView Say(Candidate asked, Voice voice, CellReason reason, Board board, Attribution attribution) =>
        new(asked.Cell, asked.Digit, voice.Wording.Why(reason).Spoken, ProofStep.Of(board, attribution, voice));

    private static WhyView Say(Candidate asked, string text) => new(asked.Cell, asked.Digit, text, []);
}
