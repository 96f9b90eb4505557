using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Asks.Answers;

/// <summary>A hint of one grade, of the type of that grade.</summary>
/// <param name="Hint">The hint.</param>
/// <param name="IsMissingStep">
/// Whether it is about a deduction that was shown or said before without a mark: the easiest open one builds on it, and whoever
/// looks at the picture alone cannot know.
/// </param>
public sealed record HintGiven(Hint Hint, bool IsMissingStep) : Answer;

/// <summary>Nothing is open that could be hinted at.</summary>
/// <param name="Cell">The cell that it should have touched, or null.</param>
public sealed record NothingOpen(Cell? Cell) : Answer;

/// <summary>A hint was wanted about a cell that has its digit, as the viewer can see.</summary>
/// <param name="Cell">The cell.</param>
public sealed record CellFilled(Cell Cell) : Answer;

/// <summary>The viewer has had the highest grade that the presenter allows now.</summary>
/// <param name="Highest">That grade.</param>
public sealed record NoFurther(Grade Highest) : Answer;

/// <summary>The viewer has had all of the deduction.</summary>
public sealed record AllGiven : Answer;

/// <summary>The viewer asks for more before the grade before it can have been read.</summary>
/// <param name="Wait">How long it will be.</param>
public sealed record TooSoon(TimeSpan Wait) : Answer;
