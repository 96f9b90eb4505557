using Companion.Engine;

namespace Companion.Session.Following;

/// <summary>Why a reading is not entered before the presenter says so.</summary>
public enum HeldReason
{
    /// <summary>It was not read for certain.</summary>
    Unsure,

    /// <summary>Its digit stands in one of its houses already.</summary>
    EqualDigits,

    /// <summary>It is a given of the puzzle, and another digit or none was read.</summary>
    GivenChanged,
}

/// <summary>A reading that is held back.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Read">What was read there.</param>
/// <param name="Reason">Why.</param>
public sealed record HeldCell(Cell Cell, CellContent Read, HeldReason Reason);
