using Companion.Engine;

namespace Companion.Session.Boards;

/// <summary>A digit that has no place left in a house that still wants it: the board cannot be filled.</summary>
/// <param name="House">The house.</param>
/// <param name="Digit">The digit.</param>
public sealed record Contradiction(House House, Digit Digit)
{
    /// <summary>What it is in one plain sentence, with the way out.</summary>
    public string Sentence =>
        $"{Digit} has no place left in {HouseName}: a digit, a mark or a strike that rules it out there is wrong.";

    private string HouseName => $"{House.Kind.ToString().ToLowerInvariant()} {House.Number}";

    /// <summary>Every contradiction of a board, by house and digit.</summary>
    public static IEnumerable<Contradiction> On(Board board)
    {
        ArgumentNullException.ThrowIfNull(board);
        for (var index = 0; index < House.Count; index++)
        {
            var house = House.At(index);
            foreach (var digit in board.MissingFrom(house))
            {
                if (!board[digit].Overlaps(house.Cells))
                    yield return new(house, digit);
            }
        }
    }
}
