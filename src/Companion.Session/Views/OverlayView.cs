using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>What the overlay of one scene may know: what is on air, at its grade, and where to draw it.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="Frame">The board's place in the scene.</param>
/// <param name="ShowsFrame">Whether the frame's outline is drawn, while it is being placed.</param>
/// <param name="OnAir">The hint on air, of the type of its grade, or null.</param>
/// <param name="Code">The code by which viewers let the delay be measured, or null.</param>
public sealed record OverlayView(long Sequence, Frame Frame, bool ShowsFrame, Hint? OnAir, string? Code)
{
    /// <summary>The cells on air that viewers call; none where they are not.</summary>
    public ValueArray<CalledCell> Called { get; init; }
}
