using System.Collections.Immutable;

namespace Companion.Server.Chat.Irc.Lines;

/// <summary>Messages as lines, and lines as messages.</summary>
internal static class IrcFormat
{
    /// <summary>Reads a line as forgivingly as is safe; several spaces part words as one does.</summary>
    /// <param name="line">The line, without CR LF.</param>
    /// <returns>The message, or null where the line holds no command, or what no line can hold.</returns>
    public static IrcMessage? Read(string line)
    {
        if (HoldsLineEnd(line))
            return null;
        var rest = line.AsSpan();
        var tags = rest.StartsWith("@") ? ReadTags(Word(ref rest)[1..].ToString()) : ImmutableSortedDictionary<string, string>.Empty;
        rest = rest.TrimStart(' ');
        var source = rest.StartsWith(":") ? IrcSource.Parse(Word(ref rest)[1..].ToString()) : null;
        rest = rest.TrimStart(' ');
        var command = Word(ref rest).ToString();
        if (!IsCommand(command))
            return null;

        var parameters = ImmutableArray.CreateBuilder<string>();
        for (rest = rest.TrimStart(' '); rest.Length > 0; rest = rest.TrimStart(' '))
        {
            // The last is all that remains, be it marked by a colon or by being the fifteenth.
            var isLast = rest[0] == ':' || parameters.Count == IrcMessage.MostParameters - 1;
            parameters.Add(isLast ? rest[(rest[0] == ':' ? 1 : 0)..].ToString() : Word(ref rest).ToString());
            if (isLast)
                break;
        }

        return new(command.ToUpperInvariant(), parameters.ToImmutable()) { Tags = tags, Source = source };
    }

    /// <summary>Writes a message as a line.</summary>
    /// <param name="message">The message.</param>
    /// <exception cref="ArgumentException">No line can say this.</exception>
    public static string Write(IrcMessage message)
    {
        var middle = message.Parameters.SkipLast(1).ToList();
        if (message.Parameters.Length > IrcMessage.MostParameters || middle.Exists(word => word.Length == 0 || NeedsColon(word)))
            throw new ArgumentException($"These words make no line: {message.Command}.", nameof(message));

        List<string> words = [];
        if (message.Source is { } source)
            words.Add($":{source}");
        words.AddRange([message.Command, .. middle]);
        if (!message.Parameters.IsEmpty)
            words.Add(NeedsColon(message.Last) ? ":" + message.Last : message.Last);
        var line = string.Join(' ', words);
        if (HoldsLineEnd(line) || LineBudget.Octets(line) > LineBudget.Line)
            throw new ArgumentException($"No line can hold this: {message.Command}.", nameof(message));
        return Tags(message) + line;
    }

    private static string Tags(IrcMessage message) => message.Tags.IsEmpty ? "" : "@" + string.Join(
        ';', message.Tags.Select(tag => tag.Value.Length > 0 ? $"{tag.Key}={TagText.Escape(tag.Value)}" : tag.Key)) + " ";

    private static bool HoldsLineEnd(string text) => text.AsSpan().IndexOfAny('\0', '\r', '\n') >= 0;

    private static bool NeedsColon(string parameter) =>
        parameter.Length == 0 || parameter[0] == ':' || parameter.Contains(' ', StringComparison.Ordinal);

    private static bool IsCommand(string word) => word.Length > 0
        && (word.All(char.IsAsciiLetter) || (word.Length == 3 && word.All(char.IsAsciiDigit)));

    private static ReadOnlySpan<char> Word(ref ReadOnlySpan<char> rest)
    {
        var end = rest.IndexOf(' ');
        var word = end < 0 ? rest : rest[..end];
        rest = end < 0 ? default : rest[end..];
        return word;
    }

    // A key that stands there twice has the last value.
    private static ImmutableSortedDictionary<string, string> ReadTags(string text)
    {
        var tags = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var tag in text.Split(';', StringSplitOptions.RemoveEmptyEntries))
        {
            var end = tag.IndexOf('=', StringComparison.Ordinal);
            tags[end < 0 ? tag : tag[..end]] = end < 0 ? "" : TagText.Unescape(tag[(end + 1)..]);
        }

        return tags.ToImmutable();
    }
}
