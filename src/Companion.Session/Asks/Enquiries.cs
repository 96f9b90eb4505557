using System.Collections.Immutable;
using Companion.Engine.Rules;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Calls;
using Companion.Session.Asks.Delays;
using Companion.Session.Asks.Gathering;
using Companion.Session.Asks.Steps;
using Companion.Session.Asks.Viewers;
using Companion.Session.Commands;
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
    private NoteFoundFirst? _lastFound;
    private long _show;
    private long _sequence;
    private long _answers;

    /// <summary>Nothing shown, nobody asked.</summary>
    /// <param name="settings">How viewers are answered.</param>
    /// <param name="voice">The words, and how fast they are read.</param>
    /// <param name="ladder">All rules. Of the presenter's cut of them those that assume one solution are left out.</param>
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

    /// <summary>When the next answer, or what is to be kept of calls, is due; null where nothing is waited for.</summary>
    public DateTimeOffset? NextAt =>
        _lastFound is not null ? DateTimeOffset.MinValue : new[] { _questions.NextAt, _calls.SureAt(Delay) }.Min();

    /// <summary>What the presenter sees of the viewers.</summary>
    public ViewersView View => new(
        _sequence, Limits, Delay, _rules?.Code, _measure.Measured, _measure.Viewers, _answers, new(_calls.Cells(Delay)));

    /// <summary>How often viewers were forgotten, as at the end of a show. Whoever hashes viewers takes a new salt with each.</summary>
    public int TimesForgotten { get; private set; }

    private AskLimits Limits => _rules?.Limits ?? _settings.Limits;

    private Delay Delay => _rules?.Delay ?? _settings.Delay;

    /// <summary>
    /// Keeps what is shown from now on. What the presenter has set about viewers holds at once; at the end of a show they are
    /// forgotten, with what they called.
    /// </summary>
    /// <param name="state">The state.</param>
    /// <param name="at">When it was shown.</param>
    public void Show(SessionState state, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(state);

        // A code that was up before this program was started came up nobody knows when.
        if (_rules is { } before && state.Asks.Code is { } code && code != before.Code)
            _measure.Show(code, at);
        if (_rules is not null && (state.Show, state.Asks.ShowsEnded) != (_show, _rules.ShowsEnded))
            Forget();
        (_rules, _show, _sequence) = (state.Asks, state.Show, state.Sequence);
        _calls.Show(state, at);
        _line.Show(state, at);
    }

    /// <summary>Takes an ask. What comes too often, too soon after the last or while viewers may not ask is dropped.</summary>
    /// <returns>
    /// Whether something will be due for it, be it <see cref="Unanswered"/>. A viewer waits for one answer at a time.
    /// </returns>
    public bool Take(Asked asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.Ask is AskDelay code)
            _measure.Hear(asked.Viewer, code.Code, asked.At);
        if (!Limits.Open || _line.At(Delay.SeenAt(asked.At)) is not { } seen)
            return false;
        var viewer = _viewers[asked.Viewer];
        return asked.Ask switch
        {
            AskCall call => Count(asked, call, viewer, seen),
            AskDelay => Queue(asked, viewer, () => asked.Way.IsShared ? null : Prepared.Personal(new Counted())),
            _ => !IsQuiet(seen) && Queue(asked, viewer, () => Prepare(asked, viewer, seen)),
        };
    }

    /// <summary>The answers that are due.</summary>
    /// <param name="now">The time.</param>
    public ImmutableArray<Answered> Due(DateTimeOffset now)
    {
        var due = ImmutableArray.CreateBuilder<Answered>();
        foreach (var stale in _questions.TakeStale(now))
            due.Add(Drop(stale));
        while (_questions.Next(now) is { } question)
            due.Add(MayGoOut(question.Prepared.Answer, now) ? Answer(question, now) : Drop(question));
        return due.ToImmutable();
    }

    /// <summary>In which cells viewers were first, as far as that came to be sure; each cell is told once. Null where there are none.</summary>
    /// <param name="now">The time.</param>
    public NoteFoundFirst? FoundFirst(DateTimeOffset now)
    {
        var last = _lastFound;
        _lastFound = null;
        return last ?? FoundUntil(now);
    }

    private NoteFoundFirst? FoundUntil(DateTimeOffset now) =>
        _calls.TakeFirst(now, Delay).ToList() is { Count: > 0 } cells ? new(_calls.Loading, new([.. cells])) : null;

    private bool Queue(Asked asked, Viewer viewer, Func<Prepared?> prepare)
    {
        if (viewer.Waits || IsWithinPause(viewer.AskedAt, asked.At))
            return false;
        viewer.AskedAt = asked.At;
        return viewer.Waits = prepare() is { } prepared && _questions.Add(asked, prepared);
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
    private bool Count(Asked asked, AskCall call, Viewer viewer, SessionState seen)
    {
        if (IsWithinPause(viewer.CalledAt, asked.At) || seen.Grid.Puzzle is null || seen.Grid.DigitAt(call.Cell) is not null)
            return false;
        viewer.CalledAt = asked.At;
        _calls.Count(asked.Viewer, call, asked.At);
        if (asked.Way.IsShared || viewer.Waits)
            return false;
        return viewer.Waits = _questions.Add(asked, Prepared.Personal(new Counted()));
    }

    private Answered Answer(Question question, DateTimeOffset now)
    {
        _questions.Said(question, now);
        _answers++;
        Release(question);
        if (question.Prepared is { Step: { } step, Answer: HintGiven given })
        {
            var pause = _settings.GradePauseSeconds is { } seconds
                ? TimeSpan.FromSeconds(seconds)
                : given.Hint.Words.TimeToSay(_voice.Rate);
            foreach (var id in question.Viewers)
                _viewers[id].Get(step, given.Hint.Grade, now + pause);
        }

        return question.Answered(question.Prepared.Answer);
    }

    private Answered Drop(Question question)
    {
        Release(question);
        return question.Answered(new Unanswered());
    }

    private void Release(Question question)
    {
        foreach (var id in question.Viewers)
            _viewers[id].Waits = false;
    }

    // What is on the delay line was seen by all and belongs to no viewer: it stays.
    private void Forget()
    {
        TimesForgotten++;
        _viewers.Clear();
        _questions.MakeStale();
        _measure.Forget();

        // Nobody's call comes any more: of all that was placed it is sure now.
        _lastFound = FoundUntil(DateTimeOffset.MaxValue);
        _calls.Clear();
    }

    // The presenter may have closed, quietened or limited the asks since the question came in.
    private bool MayGoOut(Answer answer, DateTimeOffset now) =>
        Limits.Open
        && (answer is Counted || !(_line.At(Delay.SeenAt(now)) is { } seen && IsQuiet(seen)))
        && !(answer is HintGiven given && given.Hint.Grade > Limits.Highest);

    private bool IsQuiet(SessionState seen) => Limits.QuietOnAir && seen.OnAir is not null;

    private bool IsWithinPause(DateTimeOffset? last, DateTimeOffset at) =>
        at - last < TimeSpan.FromSeconds(_settings.ViewerPauseSeconds);
}
