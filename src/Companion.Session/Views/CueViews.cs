using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.Cues;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>Makes the view of the cue list.</summary>
public static class CueViews
{
    /// <summary>The list as it is now.</summary>
    /// <param name="state">The state.</param>
    /// <param name="voice">The words.</param>
    public static CuesView Of(SessionState state, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(voice);
        if (state.Cues.CallOuts.Count == 0)
            return new(state.Sequence, []);
        var fate = Fate.On(state);
        var known = KnownBoard.Of(state).Value;
        return new(state.Sequence, [.. state.Cues.CallOuts.Select(callOut => callOut switch
        {
            DeductionCallOut deduction => View(deduction, fate(deduction.Chosen), known, voice),
            TextCallOut text => View(text, new(text.Text, text.Text), null, voice),
            _ => throw new InvalidOperationException($"There is no view of {callOut}."),
        })]);
    }

    // What is open is worded on the board as it is, since it goes on air like that; what is over, as it was when it was listed.
    private static CallOutView View(DeductionCallOut callOut, string? passed, Board? known, Voice voice)
    {
        var board = passed is null && known is not null ? known : callOut.Chosen.Board;
        var hints = voice.Wording.HintsFor(board, callOut.Deduction);
        var deduction = new CuedDeduction(
            callOut.Deduction.ToString(),
            hints.What.Name,
            hints.Why.Words.Written,
            callOut.Grade,
            [.. callOut.Deduction.PatternCells],
            passed);
        return View(callOut, hints[callOut.Grade].Words, deduction, voice);
    }

    private static CallOutView View(CallOut callOut, Saying words, CuedDeduction? deduction, Voice voice) =>
        new(callOut.Id, callOut.Version, callOut.Stage, words.Spoken, words.TimeToSay(voice.Rate).TotalSeconds, deduction);
}
