using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Asks;

/// <summary>Wants a hint.</summary>
/// <param name="Cell">A cell that the deduction should touch; null for the easiest deduction of all.</param>
/// <param name="UpTo">The grade; null for the one after the last that this viewer had of the deduction.</param>
public sealed record AskHint(Cell? Cell, Grade? UpTo) : Ask;

/// <summary>Wants to know why the digit that stands in a cell follows.</summary>
/// <param name="Cell">The cell.</param>
public sealed record AskWhy(Cell Cell) : Ask;

/// <summary>Has found a digit. It is counted, and no viewer is told whether it is right.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Digit">The digit; null for one who does not say which, and counts without being right or wrong.</param>
public sealed record AskCall(Cell Cell, Digit? Digit) : Ask;

/// <summary>Wants to know how many of each digit are still to be placed.</summary>
public sealed record AskLeft : Ask;

/// <summary>Wants to know which puzzle it is.</summary>
public sealed record AskPuzzle : Ask;

/// <summary>Sees a code on the broadcast, by which the delay is measured.</summary>
/// <param name="Code">What the viewer reads there, in lower case.</param>
public sealed record AskDelay(string Code) : Ask;

/// <summary>Wrote one of our words with something behind it that means nothing.</summary>
/// <param name="Word">The word.</param>
public sealed record AskUnclear(AskWord Word) : Ask;
