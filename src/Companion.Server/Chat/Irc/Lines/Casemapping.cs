namespace Companion.Server.Chat.Irc.Lines;

/// <summary>
/// Which letters a server takes for the same one in nicks and channels. By RFC 1459 section 2.2 the characters <c>{}|^</c> are the
/// small ones of <c>[]\~</c>.
/// </summary>
internal sealed class Casemapping
{
    private readonly string _capitals;
    private readonly string _small;

    private Casemapping(string capitals, string small) => (_capitals, _small) = (capitals, small);

    /// <summary>What holds where the server says nothing.</summary>
    public static Casemapping Rfc1459 { get; } = new(@"[]\~", "{}|^");

    private static Casemapping Rfc1459Strict { get; } = new(@"[]\", "{}|");

    private static Casemapping Ascii { get; } = new("", "");

    /// <summary>The mapping that a server names in <c>CASEMAPPING</c>.</summary>
    /// <param name="name">The name.</param>
    public static Casemapping Named(string name) => name switch
    {
        "rfc1459" => Rfc1459,
        "rfc1459-strict" => Rfc1459Strict,
        _ => Ascii,
    };

    /// <summary>The name with small letters alone.</summary>
    /// <param name="name">A nick or a channel.</param>
    public string Fold(string name) => string.Create(name.Length, name, (folded, from) =>
    {
        for (var index = 0; index < from.Length; index++)
        {
            var letter = from[index];
            folded[index] = char.IsAsciiLetterUpper(letter) ? char.ToLowerInvariant(letter)
                : _capitals.IndexOf(letter, StringComparison.Ordinal) is var at and >= 0 ? _small[at] : letter;
        }
    });

    /// <summary>Whether both are the same name.</summary>
    /// <param name="one">A name.</param>
    /// <param name="other">Another.</param>
    public bool AreSame(string one, string other) => Fold(one) == Fold(other);
}
