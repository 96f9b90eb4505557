using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;

namespace Companion.Session.State;

/// <summary>
/// A deduction that stands by or is on air, with the known board on which it was chosen: its hints are about that board, so that
/// what is on air stays the same while the presenter goes on. Compared by value.
/// </summary>
/// <param name="Grounded">The deduction with what it took for granted.</param>
/// <param name="Board">The board.</param>
public sealed record Chosen(Grounded Grounded, Board Board)
{
    /// <summary>The deduction.</summary>
    public Deduction Deduction => Grounded.Deduction;

    /// <summary>A deduction chosen now.</summary>
    public static Chosen In(SessionState state, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(state);

        // On a broken grid nothing is known but the givens.
        var board = KnownBoard.Of(state).Value ?? state.Grid.Puzzle?.Board ?? Board.Blank;
        return new(Grounded.On(state.Grid, deduction), board);
    }

    /// <inheritdoc/>
    public bool Equals(Chosen? other) =>
        other is not null && Grounded == other.Grounded
        && Board.ToString() == other.Board.ToString() && Board.Candidates == other.Board.Candidates;

    /// <inheritdoc/>
    public override int GetHashCode() => Grounded.GetHashCode();
}
