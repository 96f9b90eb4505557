using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Following;

/// <summary>
/// The entries that make cells of a grid what they are on the screen: cells erased and digits placed, then block marks, lists and
/// strikes. Each is one that the keys could make.
/// </summary>
internal sealed class ScreenEntries
{
    private readonly ImmutableArray<Command>.Builder _commands = ImmutableArray.CreateBuilder<Command>();
    private readonly Grid _grid;
    private readonly IReadOnlyDictionary<Cell, CellContent> _wanted;

    private ScreenEntries(Grid grid, IReadOnlyDictionary<Cell, CellContent> wanted) => (_grid, _wanted) = (grid, wanted);

    /// <summary>The entries, in order.</summary>
    /// <param name="grid">The grid that they meet.</param>
    /// <param name="wanted">What is to stand in each cell that changes; none of them a given.</param>
    /// <param name="withMarks">Whether marks are changed as well.</param>
    public static ImmutableArray<Command> For(Grid grid, IReadOnlyDictionary<Cell, CellContent> wanted, bool withMarks)
    {
        var entries = new ScreenEntries(grid, wanted);
        entries.Digits(withMarks);
        if (withMarks)
            entries.Marks();
        return entries._commands.ToImmutable();
    }

    private void Digits(bool withMarks)
    {
        var emptied = Where(cell => _wanted[cell] is { Digit: null } wanted
            && (_grid.Placed.Cells.Contains(cell) || (withMarks && wanted.IsEmpty && !CellContent.Of(_grid, cell).IsEmpty)));
        if (!emptied.IsEmpty)
            _commands.Add(new EraseCells(emptied));
        foreach (var (cell, wanted) in _wanted.OrderBy(pair => pair.Key))
        {
            if (wanted.Digit is { } digit && _grid.DigitAt(cell) != digit)
                _commands.Add(new PlaceDigit(cell, digit));
        }
    }

    // What goes comes first: a block mark has room for three places, and a list that loses a digit says nothing that is not meant.
    private void Marks()
    {
        foreach (var digit in Digit.All)
        {
            Toggle(Where(cell => Before(cell).Struck.Contains(digit) && !_wanted[cell].Struck.Contains(digit)), cells => new ToggleStrike(cells, digit));
            ToggleByBlock(Where(cell => Before(cell).BlockMarks.Contains(digit) && !_wanted[cell].BlockMarks.Contains(digit)), digit);
            Toggle(Where(cell => (Before(cell).CellMark - _wanted[cell].CellMark).Contains(digit)), cells => new ToggleCellMark(cells, digit));
        }

        foreach (var digit in Digit.All)
            ToggleByBlock(Where(cell => (_wanted[cell].BlockMarks - Before(cell).BlockMarks).Contains(digit)), digit);
        _commands.AddRange(ListEntries.For([.. Open.Select(cell =>
            new ListEntries.Addition(cell, Before(cell).CellMark, _wanted[cell].CellMark - Before(cell).CellMark))]));
        foreach (var digit in Digit.All)
            Toggle(Where(cell => (_wanted[cell].Struck - Before(cell).Struck).Contains(digit)), cells => new ToggleStrike(cells, digit));
    }

    // Cells that are erased are empty then, whatever stood there.
    private CellContent Before(Cell cell)
    {
        var before = CellContent.Of(_grid, cell);
        return before.Digit is not null || _wanted[cell].IsEmpty ? default : before;
    }

    private IEnumerable<Cell> Open => _wanted.Keys.Where(cell => _wanted[cell].Digit is null).Order();

    private CellSet Where(Func<Cell, bool> holds) => CellSet.Of([.. Open.Where(holds)]);

    private void Toggle(CellSet cells, Func<CellSet, Command> toggle)
    {
        if (!cells.IsEmpty)
            _commands.Add(toggle(cells));
    }

    private void ToggleByBlock(CellSet cells, Digit digit)
    {
        for (var block = 1; block <= 9; block++)
            Toggle(cells & House.Block(block).Cells, places => new ToggleBlockMark(places, digit));
    }
}
