using System.Text.Json;
using Companion.Server.Wire;
using StackExchange.Redis;

namespace Companion.Server.Relay.Notices;

/// <summary>What passes between the presenter's server and the audience servers besides SignalR's own messages, and under which names.</summary>
internal static class Channels
{
    /// <summary>The key with the newest <see cref="BoardNotice"/>, and the channel on which each is published.</summary>
    public const string Board = "board";

    /// <summary>Where audience servers publish <see cref="AskNotice"/>s.</summary>
    public static RedisChannel Asks { get; } = RedisChannel.Literal("asks");

    /// <summary>Where the presenter's server publishes <see cref="BoardNotice"/>s.</summary>
    public static RedisChannel Boards { get; } = RedisChannel.Literal(Board);

    /// <summary>Where an audience server is sent its <see cref="AnswerNotice"/>s.</summary>
    /// <param name="server">The audience server's name.</param>
    public static RedisChannel Answers(string server) => RedisChannel.Literal($"answers:{server}");

    /// <summary>Writes a notice.</summary>
    /// <param name="notice">The notice.</param>
    public static RedisValue Write<T>(T notice) => JsonSerializer.SerializeToUtf8Bytes(notice, WireJson.Options);

    /// <summary>Reads a notice.</summary>
    /// <param name="text">What came.</param>
    /// <returns>The notice, or null where it is none.</returns>
    public static T? Read<T>(RedisValue text)
        where T : class
    {
        try
        {
            return text.IsNull ? null : JsonSerializer.Deserialize<T>((byte[])text!, WireJson.Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
