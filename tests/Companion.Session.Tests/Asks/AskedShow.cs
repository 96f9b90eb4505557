using Companion.Engine.Rules;
using Companion.Session.Asks;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Viewers;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Tests.Asks;

/// <summary>A session on air with viewers who ask, on a clock that moves when it is told to.</summary>
internal sealed class AskedShow
{
    public static readonly Way Chat = new("chat", IsShared: true);
    public static readonly Way Page = new("page", IsShared: false);

    private static readonly ShowSalt Salt = new(new byte[ShowSalt.Length]);

    private readonly AskText _reader;
    private readonly AnswerWords _words;

    /// <summary>A show; without settings one that answers at once and pauses for nothing but the grades.</summary>
    public AskedShow(AskSettings? settings = null, PlayedSession? session = null)
    {
        var with = settings ?? AtOnce;
        (Session, Enquiries) = (session ?? new(), new(with, ShippedVoice.Voice, Ladder.Standard));
        (_reader, _words) = (new(with.Prefix), new(ShippedVoice.Voice.Wording, with.Prefix));
        Keep();
    }

    public static AskSettings AtOnce { get; } = new()
    {
        DelaySeconds = 0,
        ViewerPauseSeconds = 0,
        ChatPauseSeconds = 0,
        RepeatPauseSeconds = 0,
        GatherSeconds = 0,
    };

    public PlayedSession Session { get; }

    public Enquiries Enquiries { get; }

    public DateTimeOffset Now { get; private set; } = PlayedSession.Start;

    /// <summary>All that was shown so far, with the time.</summary>
    public List<(DateTimeOffset At, SessionState State)> Shown { get; } = [];

    /// <summary>All that was answered so far, with the time.</summary>
    public List<(DateTimeOffset At, Answered Answered)> Answers { get; } = [];

    public static AskedShow Of(string puzzle, AskSettings? settings = null) => new(settings, PlayedSession.Of(puzzle));

    public static ViewerId IdOf(string name, Way? way = null) => Salt.IdOf((way ?? Chat).Name, name);

    public AskedShow Do(params Command[] commands)
    {
        foreach (var command in commands)
            Try(command);
        return this;
    }

    public Decision Try(Command command)
    {
        var decision = Session.Try(command);
        Keep();
        return decision;
    }

    public AskedShow Place(string cell, int digit) => Do(new PlaceDigit(Engine.Cell.Parse(cell), Engine.Digit.Of(digit)));

    /// <summary>Has the session find the proofs of its entries, as the server does when it is idle.</summary>
    public AskedShow Attribute()
    {
        Session.Attribute();
        Keep();
        return this;
    }

    /// <summary>Lets time pass, and answers go out second by second.</summary>
    public AskedShow Wait(double seconds)
    {
        var until = Now + TimeSpan.FromSeconds(seconds);
        while (Now < until)
        {
            Now = Now + TimeSpan.FromSeconds(1) < until ? Now + TimeSpan.FromSeconds(1) : until;
            GoOut();
        }

        return this;
    }

    /// <summary>The lines that go out while something happens.</summary>
    public string[] Lines(Action happens)
    {
        var before = Answers.Count;
        happens();
        return [.. Answers.Skip(before).SelectMany(answer => _words.LinesOf(answer.Answered))];
    }

    /// <summary>A viewer writes a line; the lines that come back at once.</summary>
    public string[] Types(string name, string line, Way? way = null)
    {
        if (_reader.Read(line) is { } ask)
            Enquiries.Take(new(way ?? Chat, IdOf(name, way), name, ask, Now));
        return GoOut();
    }

    /// <summary>Lets go out what is due now.</summary>
    public string[] GoOut()
    {
        var due = Enquiries.Due(Now);
        Answers.AddRange(due.Select(answered => (Now, answered)));
        return [.. due.SelectMany(answered => _words.LinesOf(answered))];
    }
    private void Keep()
    {
        Shown.Add((Now, Session.State));
        Enquiries.Show(Session.State, Now);
    }
}
