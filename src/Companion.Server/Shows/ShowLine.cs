using System.Collections.Immutable;

namespace Companion.Server.Shows;

/// <summary>A kept show as a list names it.</summary>
/// <param name="Id">Its number, 1-based, by which it is opened. It stays the same for ever.</param>
/// <param name="Title">What it is called; empty where it has no title.</param>
/// <param name="Puzzles">The titles of the puzzles that were loaded, in order, each once.</param>
/// <param name="Began">When it began.</param>
/// <param name="Seconds">How long it took from the first event to the last, in seconds.</param>
/// <param name="Events">How many events it has.</param>
/// <param name="Entries">How many of them are entries: what the presenter did to the grid.</param>
/// <param name="Hash">The hash of its events; see <see cref="Session.Shows.Files.ShowHash"/>.</param>
/// <param name="IsLive">Whether it is the show that goes on now.</param>
/// <param name="IsImported">Whether it came from a file.</param>
public sealed record ShowLine(
    int Id,
    string Title,
    ImmutableArray<string> Puzzles,
    DateTimeOffset Began,
    double Seconds,
    int Events,
    int Entries,
    string Hash,
    bool IsLive,
    bool IsImported);
