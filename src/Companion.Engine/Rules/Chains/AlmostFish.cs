namespace Companion.Engine.Rules.Chains;

/// <summary>
/// An X-wing with a fin: without the fin's places a digit stands in two lines only where two lines across meet them, and so once in
/// each of these.
/// </summary>
/// <param name="Digit">The digit.</param>
/// <param name="Bases">The two lines, of one kind.</param>
/// <param name="Fin">The places outside the lines across: at least one, and at most <see cref="MostOfFin"/>.</param>
/// <param name="One">The places in one of the lines across.</param>
/// <param name="Other">The places in the other.</param>
internal readonly record struct AlmostFish(Digit Digit, HouseSet Bases, CellSet Fin, CellSet One, CellSet Other)
{
    // As many as a block and a line share.
    private const int MostOfFin = 3;

    /// <summary>All places of the digit in the two lines.</summary>
    internal CellSet Cells => Fin | One | Other;

    /// <summary>The first by which the two nodes, the fin and the places in one of the lines across, are linked strongly.</summary>
    internal static AlmostFish Between(Node one, Node other, Board board) => All(board).Find(fish => fish.Links(one, other));

    /// <summary>All of a board: digit by digit, rows before columns, line by line.</summary>
    internal static List<AlmostFish> All(Board board)
    {
        var found = new List<AlmostFish>();
        foreach (var digit in Digit.All)
        {
            foreach (var kind in new[] { HouseKind.Row, HouseKind.Column })
            {
                for (var one = 1; one <= 9; one++)
                {
                    for (var other = one + 1; other <= 9; other++)
                        Find(digit, House.Of(kind, one), House.Of(kind, other), board, found);
                }
            }
        }

        return found;
    }

    private static void Find(Digit digit, House first, House second, Board board, List<AlmostFish> found)
    {
        var (ofFirst, ofSecond) = (board[digit] & first.Cells, board[digit] & second.Cells);
        if (ofFirst.Count < 2 || ofSecond.Count < 2)
            return;
        var places = ofFirst | ofSecond;
        var across = first.Kind == HouseKind.Row ? HouseKind.Column : HouseKind.Row;
        for (var one = 1; one <= 9; one++)
        {
            for (var other = one + 1; other <= 9; other++)
            {
                var (ofOne, ofOther) = (places & House.Of(across, one).Cells, places & House.Of(across, other).Cells);
                var fin = places - ofOne - ofOther;
                if (!ofOne.IsEmpty && !ofOther.IsEmpty && fin.Count is >= 1 and <= MostOfFin
                    && !fin.ContainsAll(ofFirst) && !fin.ContainsAll(ofSecond))
                    found.Add(new(digit, HouseSet.Of(first, second), fin, ofOne, ofOther));
            }
        }
    }

    private bool Links(Node one, Node other) => one.Digit == Digit && other.Digit == Digit
        && ((one.Cells == Fin && IsAcross(other.Cells)) || (other.Cells == Fin && IsAcross(one.Cells)));

    private bool IsAcross(CellSet cells) => cells == One || cells == Other;
}
