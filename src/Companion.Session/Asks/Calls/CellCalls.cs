using Companion.Engine;

namespace Companion.Session.Asks.Calls;

/// <summary>What viewers called of one cell. Only for the presenter and the co-hosts.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Viewers">How many viewers say that they have found its digit.</param>
/// <param name="Named">How many of them say which digit it is.</param>
/// <param name="Right">How many of these are right.</param>
/// <param name="Standing">Who was first; null until the presenter has placed the digit, or where nobody was right.</param>
/// <param name="Earlier">By how many seconds the first right call came before the presenter's entry; null with no standing.</param>
public sealed record CellCalls(Cell Cell, int Viewers, int Named, int Right, CallStanding? Standing, double? Earlier);
