using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>A deduction that stood open while harder steps were made.</summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="Board">The known board on which it was first open.</param>
/// <param name="From">From when on, in the video.</param>
/// <param name="To">Until when it was open, or the puzzle's end.</param>
/// <param name="Entries">How many entries were made meanwhile.</param>
/// <param name="Harder">The hardest rule that was worked meanwhile.</param>
/// <param name="WasTaken">Whether what follows from it was there in the end.</param>
public sealed record Overlooked(Deduction Deduction, Board Board, TimeSpan From, TimeSpan To, int Entries, RuleId Harder, bool WasTaken);
