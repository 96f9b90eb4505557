using Companion.Engine;

namespace Companion.Session.State;

/// <summary>
/// A cell of which viewers say that they have found its digit, as it may be shown on air: neither which digit, nor whether they are
/// right, nor exactly how many they are.
/// </summary>
/// <param name="Cell">The cell.</param>
/// <param name="AtLeast">How many viewers at least; one of <see cref="Asks.Calls.CallBands"/>.</param>
public sealed record CalledCell(Cell Cell, int AtLeast);
