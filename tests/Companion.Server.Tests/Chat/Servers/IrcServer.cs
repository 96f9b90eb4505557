using Companion.Server.Chat.Irc;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>A real IRC server.</summary>
internal abstract class IrcServer : ChildServer
{
    /// <summary>The settings of a chat there.</summary>
    public IrcSettings Settings(string channel) => new() { Server = "127.0.0.1", Port = Port, Tls = false, Nick = "hintbot", Channel = channel };
}
