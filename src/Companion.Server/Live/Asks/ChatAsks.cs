using System.Collections.Immutable;
using Companion.Server.Chat;
using Companion.Session.Asks;

namespace Companion.Server.Live.Asks;

/// <summary>Hears viewers' asks in the chats.</summary>
/// <param name="desk">Where asks are answered.</param>
internal sealed class ChatAsks(AskDesk desk) : IChatListener
{
    /// <summary>
    /// Hears a line. The answer comes when those who ask the same have been gathered, some seconds later: whoever reads the chat does
    /// not wait for it before the next line.
    /// </summary>
    public async ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop)
    {
        var asking = desk.Ask(new Way(line.Source, IsShared: true), line.UserId, line.DisplayName, line.Text);
        return (await asking.WaitAsync(stop)).Lines;
    }
}
