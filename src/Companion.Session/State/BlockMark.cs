using Companion.Engine;

namespace Companion.Session.State;

/// <summary>
/// A block mark (Snyder notation): "in this block the digit goes in one of these cells".
/// </summary>
/// <param name="Block">The block.</param>
/// <param name="Digit">The digit.</param>
/// <param name="Places">The cells in which the digit is written, one to three.</param>
/// <param name="IsComplete">
/// Whether it has had two places at once. Before that it is being written and says nothing; after it, a mark that is down to one
/// place is a free digit.
/// </param>
public sealed record BlockMark(House Block, Digit Digit, CellSet Places, bool IsComplete);
