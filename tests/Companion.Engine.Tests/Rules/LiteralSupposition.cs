namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>A board on which some candidates are supposed to be true, as the literal nets read it.</summary>
internal sealed class LiteralSupposition
{
    private readonly Dictionary<Place, List<int>> _open;
    private readonly List<(LiteralHouse House, int Digit)> _missing;
    private readonly List<(Place Cell, int Digit)> _placed;

    public LiteralSupposition(LiteralGrid grid)
    {
        _open = LiteralGrid.AllCells.FindAll(grid.IsOpen).ToDictionary(cell => cell, grid.Candidates);
        _missing = [.. from house in LiteralGrid.Houses from digit in grid.Missing(house) select (house, digit)];
        _placed = [];
    }

    private LiteralSupposition(
        Dictionary<Place, List<int>> open, List<(LiteralHouse House, int Digit)> missing, List<(Place Cell, int Digit)> placed) =>
        (_open, _missing, _placed) = (open, missing, placed);

    private LiteralSupposition(LiteralSupposition before, (Place Cell, int Digit) placed)
    {
        _open = before._open.Where(pair => pair.Key != placed.Cell).ToDictionary(
            pair => pair.Key,
            pair => LiteralGrid.See(pair.Key, placed.Cell) ? pair.Value.FindAll(digit => digit != placed.Digit) : pair.Value);
        _missing = before._missing.FindAll(missing => missing.Digit != placed.Digit || !missing.House.Has(placed.Cell));
        _placed = [.. before._placed, placed];
    }

    /// <summary>The same for the same candidates in any order.</summary>
    public string Name => string.Join(' ', _placed.Order());

    /// <summary>Whether a cell has no candidate, or a house no place for a digit that it misses.</summary>
    public bool IsDead => _open.Values.Any(digits => digits.Count == 0) || _missing.Exists(missing => Places(missing).Count == 0);

    /// <summary>The last candidates of cells, and the last places of digits in houses.</summary>
    public List<(Place Cell, int Digit)> Singles =>
    [
        .. _open.Where(pair => pair.Value.Count == 1).Select(pair => (pair.Key, pair.Value[0]))
            .Concat(_missing.Where(missing => Places(missing).Count == 1).Select(missing => (Places(missing)[0], missing.Digit)))
            .Distinct(),
    ];

    public bool Stands((Place Cell, int Digit) candidate) =>
        _open.TryGetValue(candidate.Cell, out var digits) && digits.Contains(candidate.Digit);

    public List<(Place Cell, int Digit)> Candidates =>
        [.. _open.SelectMany(pair => pair.Value.Select(digit => (pair.Key, digit)))];

    public LiteralSupposition Without((Place Cell, int Digit) candidate) => new(
        _open.ToDictionary(
            pair => pair.Key,
            pair => pair.Key == candidate.Cell ? pair.Value.FindAll(digit => digit != candidate.Digit) : pair.Value),
        _missing,
        _placed);

    public LiteralSupposition With((Place Cell, int Digit) candidate) => new(this, candidate);

    private List<Place> Places((LiteralHouse House, int Digit) missing) =>
        missing.House.Cells.FindAll(cell => Stands((cell, missing.Digit)));
}
