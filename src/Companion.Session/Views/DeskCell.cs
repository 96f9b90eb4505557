using Companion.Engine;

namespace Companion.Session.Views;

/// <summary>One cell as the presenter and the co-hosts see it.</summary>
/// <param name="Digit">The digit, or null.</param>
/// <param name="IsGiven">Whether the digit was given.</param>
/// <param name="CellMark">The candidate list written in the cell, or null where none is written.</param>
/// <param name="BlockMarks">Digits written as block marks.</param>
/// <param name="Struck">Candidates that the presenter struck.</param>
/// <param name="Candidates">Candidates that stand on the known board.</param>
public sealed record DeskCell(
    Digit? Digit, bool IsGiven, DigitSet? CellMark, DigitSet BlockMarks, DigitSet Struck, DigitSet Candidates);
