namespace Companion.Engine.Tests.Rules;

/// <summary>A house as the literal finders read it.</summary>
/// <param name="name">Such as <c>r4</c>.</param>
/// <param name="cells">Its nine cells.</param>
internal sealed class LiteralHouse(string name, List<(int Row, int Column)> cells)
{
    private readonly bool[,] _has = Mark(cells);

    public string Name => name;

    public List<(int Row, int Column)> Cells => cells;

    public bool Has((int Row, int Column) cell) => _has[cell.Row, cell.Column];

    private static bool[,] Mark(List<(int Row, int Column)> cells)
    {
        var has = new bool[10, 10];
        foreach (var (row, column) in cells)
            has[row, column] = true;
        return has;
    }
}
