using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Following;

/// <summary>Tells the session's puzzle from another one, and both from something else that lies over the grid.</summary>
internal static class PuzzleSeen
{
    // A given or two may be misread; another puzzle shares few with this one.
    private const int MostChanged = 2;

    // No puzzle with fewer givens has one solution: G. McGuire, B. Tugemann, G. Civario, "There Is No 16-Clue Sudoku" (2012).
    private const int FewestGivens = 17;

    /// <summary>What is on the screen.</summary>
    public enum Kind
    {
        /// <summary>The session's puzzle.</summary>
        Same,

        /// <summary>Another one.</summary>
        Other,

        /// <summary>None.</summary>
        None,
    }

    /// <summary>What is on the screen.</summary>
    /// <param name="meant">The screen, with what the presenter said of it.</param>
    /// <param name="grid">The session's grid.</param>
    public static Kind Of(Screen meant, Grid grid)
    {
        if (grid.Puzzle is not null && Changed(meant, grid).Count <= MostChanged)
            return Kind.Same;
        var givens = meant.Givens(_ => true);
        return givens.Count(character => character != BoardText.Blank) >= FewestGivens && Board.Read(new(meant.Givens(cell => cell.IsSure))).IsGood
            ? Kind.Other
            : Kind.None;
    }

    private static CellSet Changed(Screen meant, Grid grid)
    {
        var givens = grid.Givens;
        return meant.Where((cell, seen) => givens.Contains(cell)
            ? seen.Content.Digit != grid.DigitAt(cell)
            : seen is { IsSure: true, IsGiven: true });
    }
}
