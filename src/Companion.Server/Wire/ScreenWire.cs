using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Following;
using Companion.Session.State;

namespace Companion.Server.Wire;

/// <summary>What the presenter's page is told of its screen.</summary>
/// <param name="Status">How following goes.</param>
/// <param name="Again">After how many milliseconds to send the grid again even if it has not changed; null for not at all.</param>
/// <param name="Held">What waits for the presenter.</param>
/// <param name="OtherGivens">How many digits another puzzle on the screen has; null where it is the session's.</param>
/// <param name="Apart">Cells in which screen and session have differed for a while.</param>
/// <param name="Refusal">Why something on the screen could not be entered; null where all could.</param>
public sealed record ScreenWire(
    FollowStatus Status, int? Again, ImmutableArray<HeldWire> Held, int? OtherGivens, ImmutableArray<Cell> Apart, string? Refusal)
{
    internal static ScreenWire Of(FollowStep step, Grid grid, string? refusal) => new(
        step.Status,
        step.Again is { } again ? (int)Math.Ceiling(again.TotalMilliseconds) : null,
        [.. step.Held.Select(held => HeldWire.Of(held, grid))],
        step.OtherPuzzle?.Count(char.IsAsciiDigit),
        [.. step.Apart],
        refusal);
}
