namespace Companion.Engine.Tests.Rules;

/// <summary>
/// A board as the literal finders read it: lists of plain numbers, with the houses counted out here, and nothing of the engine's
/// sets or tables.
/// </summary>
internal sealed class LiteralGrid
{
    // Candidates by row and column, 1 to 9; null where the cell is filled.
    private readonly List<int>?[,] _candidates = new List<int>?[10, 10];

    private readonly int?[,] _digits = new int?[10, 10];

    public LiteralGrid(Board board)
    {
        foreach (var cell in AllCells)
        {
            var place = Cell.Of(cell.Row, cell.Column);
            _digits[cell.Row, cell.Column] = board.DigitAt(place)?.Value;
            if (board.DigitAt(place) is null)
                _candidates[cell.Row, cell.Column] = [.. board[place].Select(digit => digit.Value)];
        }
    }

    public static List<(int Row, int Column)> AllCells { get; } =
        [.. from row in Enumerable.Range(1, 9) from column in Enumerable.Range(1, 9) select (row, column)];

    public static List<LiteralHouse> Rows { get; } = [.. Enumerable.Range(1, 9).Select(n => House("r", n, cell => cell.Row))];

    public static List<LiteralHouse> Columns { get; } =
        [.. Enumerable.Range(1, 9).Select(n => House("c", n, cell => cell.Column))];

    public static List<LiteralHouse> Blocks { get; } =
        [.. Enumerable.Range(1, 9).Select(n => House("b", n, Block))];

    public static List<LiteralHouse> Lines { get; } = [.. Rows, .. Columns];

    public static List<LiteralHouse> Houses { get; } = [.. Lines, .. Blocks];

    public bool IsOpen((int Row, int Column) cell) => _candidates[cell.Row, cell.Column] is not null;

    public List<int> Candidates((int Row, int Column) cell) => _candidates[cell.Row, cell.Column] ?? [];

    public bool Stands((int Row, int Column) cell, int digit) => _candidates[cell.Row, cell.Column]?.Contains(digit) == true;

    /// <summary>The digits that no cell of a house holds.</summary>
    public List<int> Missing(LiteralHouse house) =>
        [.. Enumerable.Range(1, 9).Where(digit => !house.Cells.Exists(cell => _digits[cell.Row, cell.Column] == digit))];

    /// <summary>The cells of a house where the digit stands.</summary>
    public List<(int Row, int Column)> Places(LiteralHouse house, int digit) => house.Cells.FindAll(cell => Stands(cell, digit));

    public static bool See((int Row, int Column) one, (int Row, int Column) two) =>
        one != two && (one.Row == two.Row || one.Column == two.Column || Block(one) == Block(two));

    private static int Block((int Row, int Column) cell) => (cell.Row - 1) / 3 * 3 + (cell.Column - 1) / 3 + 1;

    private static LiteralHouse House(string kind, int number, Func<(int Row, int Column), int> numberOf) =>
        new(kind + number, AllCells.FindAll(cell => numberOf(cell) == number));
}
