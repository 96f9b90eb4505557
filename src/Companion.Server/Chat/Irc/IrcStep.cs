using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc;

/// <summary>What a line from the server leads to.</summary>
internal abstract record IrcStep
{
    private IrcStep()
    {
    }

    /// <summary>A line goes back, at once.</summary>
    /// <param name="Message">The line.</param>
    internal sealed record Send(IrcMessage Message) : IrcStep;

    /// <summary>The server let us in.</summary>
    internal sealed record SignedIn : IrcStep;

    /// <summary>We are doing better or worse than before.</summary>
    /// <param name="Status">How.</param>
    internal sealed record Tell(ChatStatus Status) : IrcStep;

    /// <summary>Somebody wrote something in the channel.</summary>
    /// <param name="Line">What.</param>
    internal sealed record Hear(ChatLine Line) : IrcStep;

    /// <summary>The visit is over.</summary>
    /// <param name="Reason">Why, in one plain sentence.</param>
    /// <param name="IsFinal">Whether coming again is of no use before a person has put something right.</param>
    internal sealed record End(string Reason, bool IsFinal) : IrcStep;
}
