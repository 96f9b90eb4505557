using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Following;

/// <summary>Finds the readings that nobody should enter without asking the presenter.</summary>
internal static class Holding
{
    /// <summary>The readings that are held back, in reading order.</summary>
    /// <param name="meant">The screen, with what the presenter said of it.</param>
    /// <param name="changed">The cells that have changed on it.</param>
    /// <param name="grid">The session's grid.</param>
    /// <param name="isSaid">Whether the presenter said what stands in a cell: that is never held back.</param>
    public static ImmutableArray<HeldCell> Of(Screen meant, CellSet changed, Grid grid, Func<Cell, bool> isSaid)
    {
        var held = ImmutableArray.CreateBuilder<HeldCell>();
        foreach (var cell in changed)
        {
            if (!isSaid(cell) && Reason(cell) is { } reason)
                held.Add(new(cell, meant[cell].Content, reason));
        }

        return held.ToImmutable();

        HeldReason? Reason(Cell cell)
        {
            var seen = meant[cell];
            if (grid.Givens.Contains(cell))
                return seen.Content.Digit != grid.DigitAt(cell) ? HeldReason.GivenChanged : null;
            if (!seen.IsSure)
                return HeldReason.Unsure;
            return seen.Content.Digit is { } digit && grid.DigitAt(cell) != digit && cell.Peers.Any(peer => Holds(peer, digit))
                ? HeldReason.EqualDigits
                : null;
        }

        bool Holds(Cell cell, Digit digit) => (meant[cell] is { IsSure: true } seen ? seen.Content.Digit : grid.DigitAt(cell)) == digit;
    }
}
