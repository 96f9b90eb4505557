using Companion.Server.Chat.Irc.Lines;
using Companion.Server.Chat.Irc.SignIn;
using Companion.Server.Chat.Irc.Talk;

namespace Companion.Server.Chat.Irc;

/// <summary>Our side of one conversation with a server, as a machine: lines and time go in, and steps come out. It does no I/O.</summary>
internal sealed class IrcDialog
{
    // No server has reason to ask with more, and the answer must fit into a line.
    private const int LongestToken = 400;

    private readonly Registration _registration;
    private readonly ServerTraits _traits = new();
    private readonly Hearing _hearing;
    private readonly IdleWatch _idle;
    private readonly TimeProvider _clock;

    /// <summary>Makes the machine.</summary>
    /// <param name="settings">Who we are and where we want to be.</param>
    /// <param name="password">The password, or null.</param>
    /// <param name="clock">The clock.</param>
    public IrcDialog(IrcSettings settings, Secret? password, TimeProvider clock)
    {
        _clock = clock;
        _registration = new(settings, password);
        _idle = new(clock);
        Membership = new(settings.Channel, settings.Server, _traits, clock);
        _hearing = new(Membership, _traits, clock);
    }

    /// <summary>Who we are and whether we are in the channel.</summary>
    public Membership Membership { get; }

    /// <summary>When we were let in, or null.</summary>
    public DateTimeOffset? SignedInAt { get; private set; }

    /// <summary>When <see cref="Wake"/> is to be called if nothing comes before.</summary>
    public DateTimeOffset DueAt => Membership.ComesBackAt is { } back && back < _idle.DueAt ? back : _idle.DueAt;

    /// <summary>The lines that begin it.</summary>
    public IEnumerable<IrcMessage> Begin() => _registration.Begin();

    /// <summary>Takes a line that came.</summary>
    /// <param name="line">The line, without CR LF; anything at all.</param>
    /// <returns>What it leads to, in order.</returns>
    public IReadOnlyList<IrcStep> Take(string line)
    {
        _idle.Hear();
        return IrcFormat.Read(line) switch
        {
            null => [],
            { Command: "PING" } ping when LineBudget.Octets(ping.Last) <= LongestToken => [new IrcStep.Send(IrcMessage.Of("PONG", ping.Last))],
            { Command: "ERROR" } when SignedInAt is not null => [new IrcStep.End(Reasons.Closed, false)],
            { } message when SignedInAt is null => [.. _registration.Take(message).SelectMany(step => Enter(step, message))],
            { } message => [.. Talk(message)],
        };
    }

    /// <summary>The time has come that <see cref="DueAt"/> named.</summary>
    /// <returns>What it leads to.</returns>
    public IReadOnlyList<IrcStep> Wake()
    {
        var now = _clock.GetUtcNow();
        if (Membership.ComesBackAt <= now)
            return [Membership.Join()];
        return _idle.DueAt <= now ? [_idle.Wake()] : [];
    }

    private IEnumerable<IrcStep> Enter(IrcStep step, IrcMessage message)
    {
        if (step is not IrcStep.SignedIn)
            return [step];
        SignedInAt = _clock.GetUtcNow();
        return [step, Membership.Enter(message[0])];
    }

    private IEnumerable<IrcStep> Talk(IrcMessage message)
    {
        if (message.Command == "CAP")
            return _registration.Capabilities.Take(message).Select(request => new IrcStep.Send(request));
        if (message.Command == "005")
            return LearnTraits(message);
        if (_hearing.Take(message) is { } heard)
            return [new IrcStep.Hear(heard)];
        return Membership.Take(message) is { } step ? [step] : [];
    }

    private IEnumerable<IrcStep> LearnTraits(IrcMessage message)
    {
        var before = _traits.BotMode;
        _traits.Take(message);
        return _traits.BotMode is { } mode && mode != before
            ? [new IrcStep.Send(IrcMessage.Of("MODE", Membership.Self.Nick, $"+{mode}"))]
            : [];
    }
}
