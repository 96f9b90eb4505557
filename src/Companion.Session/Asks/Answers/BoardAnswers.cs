using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Asks.Answers;

/// <summary>Why a digit that stands there follows.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Hint">The deduction that places it, and nothing but it.</param>
/// <param name="StepsBefore">How many deductions lead up to it; 0 where it was open before the digit was placed.</param>
public sealed record WhyFollows(Cell Cell, WhyHint Hint, int StepsBefore) : Answer;

/// <summary>The cell is a given.</summary>
/// <param name="Cell">The cell.</param>
public sealed record WhyGiven(Cell Cell) : Answer;

/// <summary>The cell is open, as far as the viewer can see.</summary>
/// <param name="Cell">The cell.</param>
public sealed record WhyOpen(Cell Cell) : Answer;

/// <summary>There is no short reason. It is the same for a digit that takes many steps and for one that is wrong.</summary>
/// <param name="Cell">The cell.</param>
public sealed record WhyUnknown(Cell Cell) : Answer;

/// <summary>How many of each digit are still to be placed.</summary>
/// <param name="Left">For the digits 1 to 9 in order, 0 to 9.</param>
public sealed record DigitsLeft(ValueArray<int> Left) : Answer;

/// <summary>Which puzzle it is and whom it is owed to.</summary>
/// <param name="Credit">The credit.</param>
public sealed record PuzzleNamed(Credit Credit) : Answer;

/// <summary>How a word is written.</summary>
/// <param name="Word">The word.</param>
public sealed record HowToAsk(AskWord Word) : Answer;

/// <summary>
/// Nothing is said after all: the presenter closed or limited the asks, or put something on air, while the question waited.
/// </summary>
public sealed record Unanswered : Answer;

/// <summary>A call or a code was counted; pages say so, in a chat it would only be noise.</summary>
public sealed record Counted : Answer;
