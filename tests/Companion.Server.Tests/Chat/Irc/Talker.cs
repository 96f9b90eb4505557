using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Chat.Irc;

/// <summary>A conversation written down as lines: what the server says, and what comes of it.</summary>
internal sealed class Talker
{
    private readonly IrcDialog _dialog;

    public Talker(string account = "", string? password = null, string nick = "hintbot")
    {
        IrcSettings settings = new() { Server = "irc.example", Nick = nick, Channel = "#grid", Account = account };
        _dialog = new(settings, password is null ? null : new Secret(password), Clock);
        Begun = [.. _dialog.Begin().Select(message => message.ToString())];
    }

    public FakeTimeProvider Clock { get; } = new();

    /// <summary>The lines it began with.</summary>
    public IReadOnlyList<string> Begun { get; }

    public IrcDialog Dialog => _dialog;

    /// <summary>What was heard in the channel.</summary>
    public List<ChatLine> Heard { get; } = [];

    /// <summary>The newest status.</summary>
    public ChatStatus? Status { get; private set; }

    /// <summary>How it ended, or null.</summary>
    public IrcStep.End? End { get; private set; }

    /// <summary>A talker that is in the channel.</summary>
    public static Talker InChannel(params string[] traits)
    {
        var talker = new Talker();
        talker.Answers(":irc.example CAP * LS :message-tags");
        talker.Answers(":irc.example CAP * ACK :message-tags");
        talker.Answers(":irc.example 001 hintbot :Welcome");
        foreach (var trait in traits)
            talker.Answers($":irc.example 005 hintbot {trait} :are supported by this server");
        talker.Answers(":hintbot!~hintbot@example.host JOIN #grid");
        return talker;
    }

    /// <summary>What we send when these lines come.</summary>
    public string[] Answers(params string[] lines) => Send(lines.SelectMany(_dialog.Take));

    /// <summary>What we send when this time has gone by in silence.</summary>
    public string[] After(TimeSpan time)
    {
        Clock.Advance(time);
        return Send(_dialog.Wake());
    }

    private string[] Send(IEnumerable<IrcStep> steps)
    {
        List<string> sent = [];
        foreach (var step in steps)
        {
            switch (step)
            {
                case IrcStep.Send send:
                    sent.Add(send.Message.ToString());
                    break;
                case IrcStep.Hear hear:
                    Heard.Add(hear.Line);
                    break;
                case IrcStep.Tell tell:
                    Status = tell.Status;
                    break;
                case IrcStep.End end:
                    End = end;
                    break;
            }
        }

        return [.. sent];
    }
}
