using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>The digits that a cell seems to hold.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Big">The big digit; null where there is none.</param>
/// <param name="Marks">The marks in <see cref="ReadingOrder"/>; none beside a big digit.</param>
/// <param name="Unread">What stands beside sure marks and was read as nothing.</param>
internal readonly record struct CellDigits(Cell Cell, Sign? Big, IReadOnlyList<Sign> Marks, IReadOnlyList<Sign> Unread);
