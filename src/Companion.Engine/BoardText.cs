namespace Companion.Engine;

/// <summary>Grids as text: reads the layouts that people paste, and writes 81 characters or nine lines.</summary>
public static class BoardText
{
    /// <summary>The character that is written for an empty cell.</summary>
    public const char Blank = '.';

    /// <summary>
    /// Reads 81 characters, or nine lines of nine, with <c>.</c>, <c>0</c> or a space for an empty cell. Lines longer than nine
    /// characters may have blanks and <c>| + -</c> as ornament; lines that are ornament alone are left out. Nothing is refused
    /// here: what does not fit stands in the draft and is named when the draft is validated.
    /// </summary>
    /// <param name="text">What was pasted.</param>
    public static GridDraft Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = LinesOf(text);
        var cells = lines.Count == 1 ? OneLine(lines[0]) : string.Concat(lines.Select(Row));
        return new(cells.Replace('0', Blank).Replace(' ', Blank));
    }

    /// <summary>The 81 characters of a board's filled cells, row by row, <c>.</c> for an empty cell.</summary>
    /// <param name="board">The board.</param>
    public static string Write(Board board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return string.Create(Cell.Count, board, static (text, board) =>
        {
            for (var index = 0; index < Cell.Count; index++)
                text[index] = board.DigitAt(Cell.Unchecked(index)) is { } digit ? (char)('0' + digit.Value) : Blank;
        });
    }

    /// <summary>The same as nine lines of nine characters.</summary>
    /// <param name="board">The board.</param>
    public static string WriteLines(Board board) => string.Join('\n', Write(board).Chunk(9).Select(row => new string(row)));

    // Empty lines before and after belong to the pasting; but up to nine lines an empty one is a row whose blanks were trimmed.
    private static List<string> LinesOf(string text)
    {
        var all = text.ReplaceLineEndings("\n");
        var lines = (all.EndsWith('\n') ? all[..^1] : all).Split('\n').ToList();
        if (lines.Count(line => line.Length > 0) == 1)
            return lines.FindAll(line => line.Length > 0);
        while (lines.Count > 9 && lines[^1].Length == 0)
            lines.RemoveAt(lines.Count - 1);
        while (lines.Count > 9 && lines[0].Length == 0)
            lines.RemoveAt(0);
        if (lines.Count > 9)
            lines.RemoveAll(line => IsOrnament(line) && !string.IsNullOrWhiteSpace(line));
        if (lines.Count > 9)
            lines.RemoveAll(string.IsNullOrWhiteSpace);
        return lines;
    }

    private static string OneLine(string line) => line.Length == Cell.Count ? line : Bare(line);

    // A row whose blanks at the end were trimmed by an editor is still a row of nine.
    private static string Row(string line)
    {
        var row = line.Length > 9 ? line.TrimEnd() : line;
        return row.Length <= 9 ? row.PadRight(9) : Bare(row);
    }

    private static string Bare(string line) =>
        string.Concat(line.Where(c => !char.IsWhiteSpace(c) && c is not ('|' or '+' or '-')));

    private static bool IsOrnament(string line) => Bare(line).Length == 0;
}
