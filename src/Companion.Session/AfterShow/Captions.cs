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
/// But words do not stay behind their picture: a further grade of a deduction takes the place of the grade before at once, and what went
/// off air gives way to what is said next.
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

    private static ImmutableArray<Caption> Timed(IEnumerable<Saying> said)
    {
        var captions = new List<Caption>();
        Saying? before = null;
        foreach (var now in said)
        {
            var at = TimeSpan.FromMilliseconds(Math.Floor(now.At.TotalMilliseconds));
            if (captions is [.., var last] && GivesWayAt(last, before!, now, at) is var end && end < last.To)
            {
                captions.RemoveAt(captions.Count - 1);
                if (end > last.From)
                    captions.Add(last with { To = end });
                at = end > at ? end : at;
            }
            else if (captions is [.., var standing] && standing.To > at)
            {
                at = standing.To;
            }

            captions.Add(new(at, at + Caption.ReadingTime(now.Text), now.Text));
            before = now;
        }

        return [.. captions];
    }

    // When a caption makes place for what is said next.
    private static TimeSpan GivesWayAt(Caption last, Saying before, Saying next, TimeSpan at)
    {
        if (next.OnAir is not null && next.OnAir.Equals(before.OnAir))
            return at > last.From ? at : last.From;
        var leastEnd = last.From + Caption.Least;
        return before.IsOff ? (at > leastEnd ? at : leastEnd) : last.To;
    }

    private static IEnumerable<Saying> Said(StoredShow show, Wording wording)
    {
        var before = SessionState.Initial;
        (Deduction? Deduction, DateTimeOffset At) shown = default;
        Saying? last = null;
        foreach (var moment in show.Moments)
        {
            var text = TextOf(moment, before);
            before = moment.State;
            // The one before is waited with until the next is said: by then it is known whether it went off air.
            if (last?.OnAir is { } its && !its.Equals(moment.State.OnAir?.Deduction))
                last = last with { IsOff = true };
            if (text.Length == 0 || VideoTime.Of(show, moment) is not { } at)
                continue;
            if (last is not null)
                yield return last;
            last = new(at, OnOneLine(text), moment.Happened is PutOnAir put ? put.Deduction : null, IsOff: false);
        }

        if (last is not null)
            yield return last;

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

    // What was put on air is said of a deduction; whether it went off air before the next was said.
    private sealed record Saying(TimeSpan At, string Text, Deduction? OnAir, bool IsOff);

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
