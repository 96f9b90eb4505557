using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Commands;

namespace Companion.Session.Following;

/// <summary>What came of one look at the screen.</summary>
/// <param name="Next">Looks at the next frame.</param>
/// <param name="Status">How it goes.</param>
/// <param name="Commands">What to enter now, one after the other and with nothing in between.</param>
public sealed record FollowStep(Follower Next, FollowStatus Status, ImmutableArray<Command> Commands)
{
    /// <summary>What waits for the presenter, in reading order.</summary>
    public ImmutableArray<HeldCell> Held { get; init; } = [];

    /// <summary>The givens of another puzzle on the screen, 81 characters, or null.</summary>
    public string? OtherPuzzle { get; init; }

    /// <summary>Cells in which screen and session have differed for a while, as after an entry by hand. Nothing is done about them.</summary>
    public CellSet Apart { get; init; }

    /// <summary>When to look again even if nothing changes on the screen; null for not before that.</summary>
    public TimeSpan? Again { get; init; }
}
