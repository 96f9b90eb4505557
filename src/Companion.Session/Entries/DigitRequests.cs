using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Entries;

/// <summary>Decides on digits placed and taken out.</summary>
internal static class DigitRequests
{
    public static Decision Place(SessionState state, PlaceDigit place, DateTimeOffset now)
    {
        if (state.Grid.Givens.Contains(place.Cell))
            return Decision.Refuse($"{place.Cell} is a given: choose an empty cell.");
        if (state.Grid.DigitAt(place.Cell) == place.Digit)
            return Decision.Refuse($"{place.Digit} stands in {place.Cell} already: erase it to take it out.");
        return Decision.Of(new DigitPlaced(now, place.Cell, place.Digit));
    }

    public static Decision Erase(SessionState state, EraseCells erase, DateTimeOffset now)
    {
        var cells = erase.Cells & state.Grid.Written;
        if (!cells.IsEmpty)
            return Decision.Of(new CellsErased(now, cells));
        return Decision.Refuse(erase.Cells.Overlaps(state.Grid.Givens)
            ? "Givens stay: choose cells with digits or marks of your own."
            : "Nothing is written there: choose cells with digits or marks.");
    }

    public static Decision Clear(SessionState state, DateTimeOffset now) => state.Grid.Written.IsEmpty
        ? Decision.Refuse("Only givens are left: there is nothing to clear.")
        : Decision.Of(new GridCleared(now));
}
