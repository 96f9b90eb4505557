using Companion.Session.Asks;
using Companion.Session.Asks.Calls;
using Companion.Session.Asks.Delays;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>What the presenter and the co-hosts see of the viewers: numbers and cells, never who.</summary>
/// <param name="Sequence">Number of the last state shown; the same for several views between two states.</param>
/// <param name="Limits">How far viewers may go.</param>
/// <param name="Delay">How far they are behind, as answers take it.</param>
/// <param name="Code">The code on the overlay, or null.</param>
/// <param name="Measured">The delay as it was measured with the last code, or null.</param>
/// <param name="MeasuredViewers">How many viewers it was measured with.</param>
/// <param name="Answers">How many answers went out since the program started.</param>
/// <param name="Calls">What viewers say to have found, cell by cell.</param>
public sealed record ViewersView(
    long Sequence,
    AskLimits Limits,
    Delay Delay,
    string? Code,
    Delay? Measured,
    int MeasuredViewers,
    long Answers,
    ValueArray<CellCalls> Calls);
