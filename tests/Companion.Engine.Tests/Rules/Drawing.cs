namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Positions and conclusions drawn as text: nine words a line, <c>|</c> and lines of <c>-</c> and <c>+</c> as ornament; lines
/// left out at the end are blank.
/// </summary>
internal static class Drawing
{
    /// <summary>
    /// The board in which <c>.</c> is an open cell with every candidate that the filled cells leave, <c>58</c> one in which only
    /// these stand, <c>-58</c> one in which these do not, and <c>=5</c> a filled cell.
    /// </summary>
    public static Board Board(string text)
    {
        var words = Words(text);
        var board = Engine.Board.Blank;
        foreach (var (cell, word) in words.Where(word => word.Text[0] == '='))
            board = board.Place(new(cell, Digit.Parse(word[1..])));
        foreach (var (cell, word) in words.Where(word => word.Text[0] != '='))
        {
            var gone = word[0] == '-' ? DigitSet.Parse(word[1..]) : ~DigitSet.Parse(word);
            board = board.Remove(CandidateSet.Of(CellSet.Of(cell), gone));
        }

        return board;
    }

    /// <summary>The candidates drawn: <c>58</c> for 5 and 8 in the cell; filled cells are left out.</summary>
    public static CandidateSet Candidates(string text) => Collect(text, word => word[0] == '=' ? "" : word);

    /// <summary>The digits drawn as filled: <c>=5</c>.</summary>
    public static CandidateSet Filled(string text) => Collect(text, word => word[0] == '=' ? word[1..] : "");

    private static CandidateSet Collect(string text, Func<string, string> digits)
    {
        var set = CandidateSet.Empty;
        foreach (var (cell, word) in Words(text))
            set |= CandidateSet.Of(CellSet.Of(cell), DigitSet.Parse(digits(word)));
        return set;
    }

    private static List<(Cell Cell, string Text)> Words(string text)
    {
        var words = new List<(Cell, string)>();
        var row = 0;
        foreach (var line in text.Split('\n').Where(line => line.Any(c => c is not ('-' or '+' or ' '))))
        {
            var cells = line.Split([' ', '|'], StringSplitOptions.RemoveEmptyEntries);
            if (cells.Length != 9 || ++row > 9)
                throw new FormatException($"Line {row} of the drawing has {cells.Length} cells: {line}");
            words.AddRange(cells.Select((word, column) => (Cell.Of(row, column + 1), word)).Where(word => word.word != "."));
        }

        return words;
    }
}
