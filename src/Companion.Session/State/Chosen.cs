using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;

namespace Companion.Session.State;

/// <summary>
/// A deduction that stands by or is on air, with the known board on which it was chosen: its hints are about that board, so that
/// what is on air stays the same while the presenter goes on. Compared by value.
/// </summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="Board">The board.</param>
public sealed record Chosen(Deduction Deduction, Board Board)
{
    /// <summary>A deduction chosen now.</summary>
    public static Chosen In(SessionState state, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(state);
        // On a broken grid nothing is known but the givens.
        return new(deduction, KnownBoard.Of(state).Value ?? state.Grid.Puzzle?.Board ?? Board.Blank);
    }

    /// <inheritdoc/>
    public bool Equals(Chosen? other) =>
        other is not null && Deduction.Equals(other.Deduction)
        && Board.ToString() == other.Board.ToString() && Board.Candidates == other.Board.Candidates;

    /// <inheritdoc/>
    public override int GetHashCode() => Deduction.GetHashCode();
}
