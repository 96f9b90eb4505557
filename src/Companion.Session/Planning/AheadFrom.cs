using Companion.Engine;
using Companion.Session.Boards;
using Companion.Session.Proving;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>The board from which is looked ahead, or why none is.</summary>
/// <param name="Known">The known board; null where nothing can be said of what is ahead.</param>
/// <param name="Blocked">Why not, in one plain sentence, or null.</param>
internal readonly record struct AheadFrom(Board? Known, string? Blocked)
{
    public static AheadFrom Of(SessionState state)
    {
        if (state.Grid.Puzzle is not { } puzzle)
            return new(null, "Load a puzzle first.");
        return KnownBoard.Of(state).Value is { } known && Claim.Agrees(known, puzzle.Solution)
            ? new(known, null)
            : new(null, "There is no way on from this board: look at Watch.");
    }
}
