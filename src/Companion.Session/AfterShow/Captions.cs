using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.AfterShow;

/// <summary>
/// The call-outs that were said in a show, as captions: what was put on air, at its grade, and cues that were marked as done. Each stands
/// long enough to be read and none begins before the one before it is over, so that one that was said too soon after another comes late.
/// </summary>
public static class Captions
{
    /// <summary>The captions in order.</summary>
    /// <param name="show">The show.</param>
    /// <param name="voice">The words.</param>
    public static ImmutableArray<Caption> Of(StoredShow show, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(show);
        ArgumentNullException.ThrowIfNull(voice);
        return Timed(Said(show, voice.Wording));
    }

    /// <summary>Gives each its time on screen.</summary>
    /// <param name="said">When each was said, in order, and its words.</param>
    public static ImmutableArray<Caption> Timed(IEnumerable<(TimeSpan At, string Text)> said)
    {
        ArgumentNullException.ThrowIfNull(said);
        var captions = ImmutableArray.CreateBuilder<Caption>();
        var free = TimeSpan.Zero;
        foreach (var (at, text) in said)
        {
            var from = TimeSpan.FromMilliseconds(Math.Floor(Math.Max(at.TotalMilliseconds, free.TotalMilliseconds)));
            free = from + Caption.ReadingTime(text);
            captions.Add(new(from, free, text));
        }

        return captions.ToImmutable();
    }

    private static IEnumerable<(TimeSpan At, string Text)> Said(StoredShow show, Wording wording)
    {
        var before = SessionState.Initial;
        (Deduction? Deduction, DateTimeOffset At) shown = default;
        foreach (var moment in show.Moments)
        {
            var text = TextOf(moment, before);
            before = moment.State;
            if (text.Length > 0 && VideoTime.Of(show, moment) is { } at)
                yield return (at, OnOneLine(text));
        }

        string TextOf(Moment moment, SessionState before)
        {
            switch (moment.Happened)
            {
                case PutOnAir when moment.State.OnAir is { } cue && !IsStepBack(before.OnAir, cue):
                    shown = (cue.Deduction, moment.Happened.At);
                    return Words(cue.Chosen, cue.Grade);
                case CueTurned { Stage: CueStage.Done } turned:
                    return moment.State.Cues[turned.Id] switch
                    {
                        TextCallOut { Text: var words } => words,
                        DeductionCallOut its when shown != (its.Deduction, moment.Happened.At) => Words(its.Chosen, its.Grade),
                        _ => "",
                    };
                default:
                    return "";
            }
        }

        string Words(Chosen chosen, Grade grade) => wording.HintsFor(chosen.Board, chosen.Deduction)[grade].Words.Written;
    }

    // Back to a lower grade: nothing new is said.
    private static bool IsStepBack(Cue? before, Cue now) => before is not null && before.Deduction.Equals(now.Deduction) && before.Grade >= now.Grade;

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
