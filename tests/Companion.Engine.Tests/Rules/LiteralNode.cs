namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>A digit in one of some cells, as the literal chains read it.</summary>
/// <param name="digit">The digit, 1 to 9.</param>
/// <param name="cells">The cells, one for a candidate.</param>
internal sealed class LiteralNode(int digit, List<Place> cells)
{
    public int Digit => digit;

    public List<Place> Cells => cells;

    /// <summary>Whether both cannot be true: equal digits in cells that all see each other, or two digits of one cell.</summary>
    public bool Excludes(LiteralNode other, bool withinCells)
    {
        if (digit == other.Digit)
            return cells.TrueForAll(one => other.Cells.TrueForAll(two => LiteralGrid.See(one, two)));
        return withinCells && cells.Count == 1 && other.Cells.Count == 1 && cells[0] == other.Cells[0];
    }

    public bool Is(LiteralNode other) => digit == other.Digit && cells.Order().SequenceEqual(other.Cells.Order());
}
