using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Wire;

/// <summary>What the overlay of a scene is sent. It is read by everybody who sees the broadcast.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="Frame">The board's place in the scene.</param>
/// <param name="ShowsFrame">Whether the frame's outline is drawn.</param>
/// <param name="Grade">The grade on air, or null.</param>
/// <param name="Picture">The picture of that grade, or of the cells that viewers call, or null.</param>
/// <param name="Code">The code by which viewers let the delay be measured, or null.</param>
public sealed record OverlayWire(long Sequence, Frame Frame, bool ShowsFrame, Grade? Grade, Picture? Picture, string? Code)
{
    internal static OverlayWire Of(SessionState state, string scene, Voice voice)
    {
        var view = PublicViews.Overlay(state, scene, voice);
        return new(
            view.Sequence,
            view.Frame,
            view.ShowsFrame,
            view.OnAir?.Grade,
            view.OnAir is { } hint ? PictureOf.Hint(hint) : CalledWire.PictureOfThem(view.Called, voice),
            view.Code);
    }
}
