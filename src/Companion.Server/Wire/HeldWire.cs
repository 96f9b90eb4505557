using Companion.Engine;
using Companion.Session.Following;
using Companion.Session.State;

namespace Companion.Server.Wire;

/// <summary>A reading that is held back.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Text">What was read, and why it waits.</param>
public sealed record HeldWire(Cell Cell, string Text)
{
    internal static HeldWire Of(HeldCell held, Grid grid) => new(held.Cell, held.Reason switch
    {
        HeldReason.Unsure when held.Read.IsEmpty => $"{held.Cell} is hard to read: is there a digit?",
        HeldReason.Unsure => $"{held.Cell} is hard to read: {Words(held.Read)}?",
        HeldReason.EqualDigits => $"{held.Cell} reads as {Words(held.Read)}, which stands in one of its houses already.",
        HeldReason.GivenChanged => $"{held.Cell} was given as {grid.DigitAt(held.Cell)} and reads as {Words(held.Read)}.",
        _ => throw new ArgumentOutOfRangeException(nameof(held), held.Reason, "There is no such reason."),
    });

    private static string Words(CellContent read)
    {
        if (read.Digit is { } digit)
            return digit.ToString();
        var marks = read.BlockMarks | read.CellMark;
        return marks.IsEmpty ? "empty" : $"marks {string.Join(' ', marks)}";
    }
}
