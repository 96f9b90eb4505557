using System.Collections.Immutable;

namespace Companion.Server.Chat.Irc.Lines;

/// <summary>One line of the protocol. Sources: RFC 1459, RFC 2812 section 2.3, IRCv3 Message Tags.</summary>
/// <param name="Command">A word or three digits, in capitals.</param>
/// <param name="Parameters">At most 15.</param>
internal sealed record IrcMessage(string Command, ImmutableArray<string> Parameters)
{
    /// <summary>The most parameters that a line can have.</summary>
    public const int MostParameters = 15;

    /// <summary>A line to be sent, which has neither tags nor source.</summary>
    /// <param name="command">The command.</param>
    /// <param name="parameters">Its parameters; only the last may be empty, hold a space or begin with a colon.</param>
    public static IrcMessage Of(string command, params ReadOnlySpan<string> parameters) => new(command, [.. parameters]);

    /// <summary>The tags, unescaped; a key without a value has an empty one.</summary>
    public ImmutableSortedDictionary<string, string> Tags { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Who it comes from; null for the server at the other end.</summary>
    public IrcSource? Source { get; init; }

    /// <summary>A parameter, or an empty text where there are not as many.</summary>
    /// <param name="index">Its index, from 0 on.</param>
    public string this[int index] => index < Parameters.Length ? Parameters[index] : "";

    /// <summary>The last parameter, which is where sentences stand; empty if there is none.</summary>
    public string Last => Parameters.IsEmpty ? "" : Parameters[^1];

    /// <summary>The line, without CR LF.</summary>
    /// <exception cref="ArgumentException">
    /// No line can say this: more than 510 octets, a character that ends lines, or a space before the last parameter.
    /// </exception>
    public override string ToString() => IrcFormat.Write(this);
}
