using Companion.Engine;

namespace Companion.Session.Tests;

/// <summary>Boards as pictures in text, for expectations.</summary>
internal static class Drawing
{
    /// <summary>Where a digit stands as a candidate (<c>x</c>) and where it is filled in (the digit), as nine lines.</summary>
    public static string Of(Board board, int digit)
    {
        var cells = CellSet.All.Select(cell =>
            board.DigitAt(cell)?.Value == digit ? (char)('0' + digit)
            : board[Digit.Of(digit)].Contains(cell) ? 'x'
            : '.');
        return string.Join('\n', cells.Chunk(9).Select(row => new string(row)));
    }
}
