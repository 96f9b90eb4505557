using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>
/// A grid of which one picture comes after the other. It keeps the last one in memory, so that only cells that changed have to be
/// read. One picture at a time; it may be told to forget at any time.
/// </summary>
internal interface IWatchedGrid
{
    /// <summary>What stands in the grid.</summary>
    /// <param name="frame">The next picture.</param>
    /// <param name="place">Where the grid lies in it.</param>
    BoardReading Read(Frame frame, GridPlace place);

    /// <summary>Forgets the last picture; the next one is read as a whole.</summary>
    void Forget();
}
