using System.Collections.Immutable;
using Companion.Engine.Rules;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Calls;
using Companion.Session.Asks.Delays;
using Companion.Session.Asks.Gathering;
using Companion.Session.Asks.Steps;
using Companion.Session.Asks.Viewers;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Asks;

/// <summary>
/// What viewers ask and what they get. An answer depends on the board as the viewer sees it and on what the viewer had before; it
/// is settled when the question comes in, and goes out when it is due. Knows no clock: times come in, and do not go back.
/// </summary>
/// <remarks>Not for several threads at once. Its memory is bounded, whatever comes in.</remarks>
public sealed class Enquiries
{
    private readonly AskSettings _settings;
    private readonly Voice _voice;
    private readonly HintAnswerer _hints;
    private readonly BoardAnswerer _board;
    private readonly DelayLine _line = new();
    private readonly DelayMeasure _measure = new();
    private readonly CallBook _calls = new();
    private readonly ViewerBook _viewers;
    private readonly QuestionQueue _questions;
    private AskRules? _rules;
    private long _answers;

    /// <summary>Nothing shown, nobody asked.</summary>
    /// <param name="settings">How viewers are answered.</param>
    /// <param name="voice">The words, and how fast they are read.</param>
    /// <param name="ladder">The rules; those that assume one solution are left out.</param>
    public Enquiries(AskSettings settings, Voice voice, Ladder ladder)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(voice);
        ArgumentNullException.ThrowIfNull(ladder);
        var cache = new StepsCache(ladder);
        (_settings, _voice) = (settings, voice);
        (_hints, _board) = (new(voice.Wording, cache), new(voice.Wording, cache));
        (_viewers, _questions) = (new(settings.MostViewers), new(settings));
    }

    /// <summary>When the next answer is due, or null where nobody waits.</summary>
    public DateTimeOffset? NextAt => _questions.NextAt;

    /// <summary>What the presenter sees of the viewers.</summary>
    public ViewersView View => new(
        Limits, Delay, _rules?.Code, _measure.Measured, _measure.Viewers, _answers, _calls.Cells(Delay));

    private AskLimits Limits => _rules?.Limits ?? _settings.Limits;

    private Delay Delay => _rules?.Delay ?? _settings.Delay;

    /// <summary>Keeps what is shown from now on. What the presenter has set about viewers holds at once.</summary>
    /// <param name="state">The state.</param>
    /// <param name="at">When it was shown.</param>
    public void Show(SessionState state, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(state);

        // A code that was up before this program was started came up nobody knows when.
        if (_rules is { } before && state.Asks.Code is { } code && code != before.Code)
            _measure.Show(code, at);
        _rules = state.Asks;
        _calls.Show(state, at);
        _line.Show(state, at);
    }

    /// <summary>Takes an ask. What comes too often, too soon after the last or while viewers may not ask is dropped.</summary>
    public void Take(Asked asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.Ask is AskDelay code)
            _measure.Hear(asked.Viewer, code.Code, asked.At);
        if (!Limits.Open || _line.At(asked.At - Delay.Time) is not { } seen)
            return;
        if (asked.Ask is AskDelay)
            Ask(asked, _ => Prepared.Personal(new Counted()));
        else if (asked.Ask is AskCall call)
            Call(asked, call, seen);
        else if (!IsQuiet(seen))
            Ask(asked, viewer => Prepare(asked, viewer, seen));
    }

    /// <summary>The answers that are due.</summary>
    /// <param name="now">The time.</param>
    public ImmutableArray<Answered> Due(DateTimeOffset now)
    {
        var due = ImmutableArray.CreateBuilder<Answered>();
        foreach (var stale in _questions.TakeStale(now))
            Release(stale);
        while (_questions.Next(now) is { } question)
        {
            Release(question);
            if (!MayGoOut(question.Prepared.Answer, now))
                continue;
            Remember(question, now);
            due.Add(question.Answered());
        }

        return due.ToImmutable();
    }

    /// <summary>Forgets all viewers and what they called, as at the end of a show. What is on the delay line stays.</summary>
    public void Forget()
    {
        _viewers.Clear();
        _questions.Clear();
        _measure.Forget();
        _calls.Clear();
    }

    private void Ask(Asked asked, Func<Viewer, Prepared?> prepare)
    {
        var viewer = _viewers[asked.Viewer];
        if (viewer.Waits || IsWithinPause(viewer.AskedAt, asked.At))
            return;
        viewer.AskedAt = asked.At;
        if (prepare(viewer) is { } prepared && !(asked.Way.IsShared && prepared.Answer is Counted))
            viewer.Waits = _questions.Add(asked, prepared);
    }

    private Prepared? Prepare(Asked asked, Viewer viewer, SessionState seen) => asked.Ask switch
    {
        AskUnclear unclear => Prepared.Of(new HowToAsk(unclear.Word)),
        _ when seen.Grid.Puzzle is null => null,
        AskHint hint => _hints.Of(hint, seen, viewer, Limits.Highest, asked.At),
        AskWhy why => _board.Why(why.Cell, seen),
        AskLeft => BoardAnswerer.Left(seen),
        AskPuzzle => Prepared.Of(new PuzzleNamed(seen.Grid.Credit)),
        _ => null,
    };

    // Counted beside all other asks: whoever was just given a hint may find the digit at once.
    private void Call(Asked asked, AskCall call, SessionState seen)
    {
        var viewer = _viewers[asked.Viewer];
        if (IsWithinPause(viewer.CalledAt, asked.At) || seen.Grid.Puzzle is null || seen.Grid.DigitAt(call.Cell) is not null)
            return;
        viewer.CalledAt = asked.At;
        _calls.Count(asked.Viewer, call, asked.At);
        if (!asked.Way.IsShared && !viewer.Waits)
            viewer.Waits = _questions.Add(asked, Prepared.Personal(new Counted()));
    }

    private void Remember(Question question, DateTimeOffset now)
    {
        _questions.Said(question, now);
        _answers++;
        if (question.Prepared is not { Step: { } step, Answer: HintGiven given })
            return;
        var pause = _settings.GradePauseSeconds is { } seconds
            ? TimeSpan.FromSeconds(seconds)
            : given.Hint.Words.TimeToSay(_voice.Rate);
        foreach (var id in question.Viewers)
            _viewers[id].Get(step, given.Hint.Grade, now + pause);
    }

    private void Release(Question question)
    {
        foreach (var id in question.Viewers)
            _viewers[id].Waits = false;
    }

    // The presenter may have closed, quietened or limited the asks since the question came in.
    private bool MayGoOut(Answer answer, DateTimeOffset now) =>
        Limits.Open
        && (answer is Counted || !(_line.At(now - Delay.Time) is { } seen && IsQuiet(seen)))
        && !(answer is HintGiven given && given.Hint.Grade > Limits.Highest);

    private bool IsQuiet(SessionState seen) => Limits.QuietOnAir && seen.OnAir is not null;

    private bool IsWithinPause(DateTimeOffset? last, DateTimeOffset at) =>
        at - last < TimeSpan.FromSeconds(_settings.ViewerPauseSeconds);
}
