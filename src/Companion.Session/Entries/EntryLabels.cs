using Companion.Session.Events;

namespace Companion.Session.Entries;

/// <summary>Entries in a few words, as they stand beside undo and redo.</summary>
internal static class EntryLabels
{
    public static string Of(Event entry) => entry switch
    {
        PuzzleLoaded => "the new puzzle",
        DigitPlaced placed => $"{placed.Digit} in {placed.Cell}",
        CellsErased erased => $"erasing {ListText.Of(erased.Cells)}",
        BlockMarkChanged { IsSet: true } mark => $"block mark {mark.Digit} in block {mark.Cells.First.Block}",
        BlockMarkChanged mark => $"block mark {mark.Digit} out of {ListText.Of(mark.Cells)}",
        CellMarkChanged { IsSet: true } list => $"{list.Digit} in the list of {ListText.Of(list.Cells)}",
        CellMarkChanged list => $"{list.Digit} out of the list of {ListText.Of(list.Cells)}",
        StrikeChanged { IsStruck: true } strike => $"strike {strike.Digit} in {ListText.Of(strike.Cells)}",
        StrikeChanged strike => $"strike {strike.Digit} in {ListText.Of(strike.Cells)} taken back",
        GridCleared => "clearing the grid",
        _ => throw new ArgumentException($"{entry} is no entry.", nameof(entry)),
    };
}
