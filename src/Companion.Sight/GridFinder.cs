using Companion.Sight.Finding;

namespace Companion.Sight;

/// <summary>
/// Finds a grid of nine by nine cells in a picture, by its lines alone: whatever their colours and strength, and whatever else the
/// picture shows. On photographs it may be seen a little from aside. It knows the layout of no program.
/// </summary>
public static class GridFinder
{
    /// <summary>Looks for the grid.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="isScreen">
    /// Whether it is surely a picture of a screen, where lines run along its rows and columns: then nothing else is looked for, which is
    /// many times as fast where there is no grid. Not by default.
    /// </param>
    /// <returns>Where the grid lies; null where none is seen.</returns>
    public static GridPlace? Find(Frame frame, bool isScreen = false)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return StraightFinder.Find(frame)?.Place() ?? (isScreen ? null : PhotoFinder.Find(frame));
    }
}
