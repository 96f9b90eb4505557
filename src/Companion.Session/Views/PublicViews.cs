using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>Makes the views of what is on air. None of them is told of a scan.</summary>
public static class PublicViews
{
    /// <summary>The overlay of a scene.</summary>
    /// <param name="state">The state.</param>
    /// <param name="scene">The scene's name; one that was forgotten is shown as <see cref="Scenes.Main"/>.</param>
    /// <param name="voice">The words.</param>
    public static OverlayView Overlay(SessionState state, string scene, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        var frame = state.Scenes[scene] ?? state.Scenes[Scenes.Main]!;
        return new(state.Sequence, frame, state.ShownFrame == scene, OnAir(state, voice), state.Asks.Code) { Called = state.CalledOnAir };
    }

    /// <summary>The stage.</summary>
    /// <param name="state">The state.</param>
    /// <param name="voice">The words.</param>
    public static StageView Stage(SessionState state, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new(state.Sequence, state.Grid.Credit, StageCells.Of(state.Grid), OnAir(state, voice), state.Asks.Code)
        {
            Called = state.CalledOnAir,
        };
    }

    // The one hint of the grade on air: the three others are not handed on.
    private static Hint? OnAir(SessionState state, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(voice);
        return state.OnAir is { } cue ? voice.Wording.HintsFor(cue.Chosen.Board, cue.Deduction)[cue.Grade] : null;
    }
}
