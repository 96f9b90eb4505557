using System.Collections.Immutable;

namespace Companion.Engine.Search;

/// <summary>
/// A change of one cell after which a grid has exactly one solution: where the typing error is likely to be in one that has none or
/// several.
/// </summary>
/// <param name="Cell">The cell.</param>
/// <param name="From">The digit that stands there; null where the cell is empty and a given may be missing.</param>
/// <param name="To">The digit to write instead; null where the given may be one too many.</param>
public sealed record Correction(Cell Cell, Digit? From, Digit? To)
{
    /// <summary>
    /// All changes of one cell that give exactly one solution. First those after which the givens look the same under most turns and
    /// mirrors, since many setters place them so; of equals, changed digits before missing ones before those too many, in reading order.
    /// </summary>
    /// <param name="draft">The grid; only its text is looked at.</param>
    /// <param name="cancel">Stops between two changes.</param>
    /// <returns>Empty where the text has not 81 cells, or where one change is not enough.</returns>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static ImmutableArray<Correction> Of(GridDraft draft, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(draft);
        if (draft.Text.Length != Cell.Count)
            return [];
        return
        [
            .. CellSet.All.SelectMany(cell => Of(draft.Text, cell, cancel))
                .Select(correction => (Correction: correction, Shape: GridSymmetries.Of(correction.GivensOf(draft.Text)).Length))
                .OrderByDescending(ranked => ranked.Shape)
                .ThenBy(ranked => ranked.Correction.Kind)
                .Select(ranked => ranked.Correction),
        ];
    }

    private int Kind => (From, To) switch
    {
        ({ }, { }) => 0,
        (null, { }) => 1,
        _ => 2,
    };

    private static IEnumerable<Correction> Of(string text, Cell cell, CancellationToken cancel)
    {
        var typed = text[cell.Index];
        Digit? from = IsDigit(typed) ? Digit.At(typed - '1') : null;
        var changed = text.ToCharArray();
        if (typed != BoardText.Blank && GivesOne(BoardText.Blank))
            yield return new(cell, from, To: null);
        foreach (var digit in DigitSet.All)
        {
            if (digit != from && GivesOne((char)('0' + digit.Value)))
                yield return new(cell, from, digit);
        }

        bool GivesOne(char instead)
        {
            cancel.ThrowIfCancellationRequested();
            changed[cell.Index] = instead;
            return SolutionCounter.Count(changed) == 1;
        }
    }

    private CellSet GivensOf(string text)
    {
        var givens = CellSet.Of([.. CellSet.All.Where(cell => IsDigit(text[cell.Index]))]);
        return To is null ? givens.Without(Cell) : givens.With(Cell);
    }

    private static bool IsDigit(char character) => character is >= '1' and <= '9';
}
