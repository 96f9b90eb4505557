using System.Text;

namespace Companion.Server.Chat;

/// <summary>A password or a shared secret. It never prints itself, so that it cannot slip into a log.</summary>
/// <param name="text">The secret, not empty.</param>
internal sealed class Secret(string text)
{
    /// <summary>The secret as text: for signing in alone.</summary>
    public string Reveal() => text;

    /// <summary>The secret in UTF-8: for signatures alone.</summary>
    public byte[] RevealBytes() => Encoding.UTF8.GetBytes(text);

    /// <summary>Says that it is a secret, not which.</summary>
    public override string ToString() => "(secret)";
}
