using Companion.Server.Access;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Who may do what at the desk. What is named nowhere here only the presenter may.</summary>
internal static class Permission
{
    /// <summary>What others are told of what is the presenter's alone.</summary>
    public const string OnlyThePresenter = "Only the presenter may do this: ask the presenter.";

    /// <summary>Why somebody may not do something, in one plain sentence, or null.</summary>
    /// <param name="who">Whose key it came with.</param>
    /// <param name="command">What is wanted.</param>
    /// <param name="state">The state now.</param>
    public static string? Refusal(AccessRole who, Command command, SessionState state) => (who, command) switch
    {
        (AccessRole.Presenter, _) => null,
        (AccessRole.CoHost, StandBy or StandByCalls or StandDown or NextGrade or PreviousGrade or ClearAir or MarkUsed
            or PlaceFrame or ForgetScene or ShowFrame or TakeCue) => state.CoHostMayAir
                ? null
                : "Co-hosts may not put anything on air now: ask the presenter to allow it.",
        // The cue list and the notes are theirs: nobody outside sees them.
        (AccessRole.CoHost, NoteStep or CueDeduction or CueText or RewordCue or RegradeCue or MoveCue or TurnCue or RemoveCue or SweepCues) => null,
        _ => OnlyThePresenter,
    };
}
