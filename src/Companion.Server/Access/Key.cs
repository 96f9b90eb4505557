using System.Buffers.Text;
using System.Security.Cryptography;

namespace Companion.Server.Access;

/// <summary>
/// A key of access: 32 random bytes, written as 43 characters of base64url. ASVS 5.0 asks for at least 128 random bits. It never
/// prints itself, so that it cannot slip into a log.
/// </summary>
public sealed class Key
{
    private const int Size = 32;

    private readonly byte[] _bytes;

    private Key(byte[] bytes) => _bytes = bytes;

    /// <summary>A new key that nobody has yet.</summary>
    public static Key Make() => new(RandomNumberGenerator.GetBytes(Size));

    /// <summary>Reads a key as <see cref="Reveal"/> writes it.</summary>
    /// <param name="text">What to read; may be null.</param>
    /// <returns>The key, or null where the text is none.</returns>
    public static Key? Read(string? text)
    {
        var bytes = new byte[Size];
        return text is { Length: 43 }
            && Base64Url.IsValid(text)
            && Base64Url.TryDecodeFromChars(text, bytes, out var length)
            && length == Size
            ? new(bytes)
            : null;
    }

    /// <summary>Whether both are the same key, in a time that does not depend on how far they agree.</summary>
    /// <param name="other">The other key.</param>
    public bool Matches(Key other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return CryptographicOperations.FixedTimeEquals(_bytes, other._bytes);
    }

    /// <summary>The 43 characters: for links, cookies and the keys file alone.</summary>
    public string Reveal() => Base64Url.EncodeToString(_bytes);

    /// <summary>
    /// SHA-256 of the 43 characters, in hexadecimal digits. It recognises the key, and from it nobody finds the key, which is random
    /// throughout.
    /// </summary>
    public string Hash() => Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.ASCII.GetBytes(Reveal())));

    /// <summary>Says that it is a key, not which.</summary>
    public override string ToString() => "(key)";
}
