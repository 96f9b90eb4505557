using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Companion.Session.Asks.Viewers;

/// <summary>
/// What the viewers' ids are hashed with. It is kept in memory alone and a new one is taken for each show, so that nobody can be
/// found again afterwards, not even by trying all names.
/// </summary>
public sealed class ShowSalt
{
    /// <summary>How long a salt is, in bytes.</summary>
    public const int Length = 32;

    private readonly byte[] _salt;

    /// <summary>A salt of these bytes.</summary>
    /// <param name="salt"><see cref="Length"/> bytes of randomness.</param>
    /// <exception cref="ArgumentException">There are more or fewer.</exception>
    public ShowSalt(ReadOnlySpan<byte> salt)
    {
        if (salt.Length != Length)
            throw new ArgumentException($"A salt has {Length} bytes and not {salt.Length}.", nameof(salt));
        _salt = salt.ToArray();
    }

    /// <summary>The id of a viewer.</summary>
    /// <param name="way">The way in: the same name elsewhere may be somebody else.</param>
    /// <param name="name">What the viewer is known by there and keeps: an account, else a nick.</param>
    public ViewerId IdOf(string way, string name)
    {
        ArgumentNullException.ThrowIfNull(way);
        ArgumentNullException.ThrowIfNull(name);

        // The length keeps "ab" + "c" and "a" + "bc" apart.
        var hash = HMACSHA256.HashData(_salt, Encoding.UTF8.GetBytes($"{way.Length}:{way}{name}"));
        return new(BinaryPrimitives.ReadUInt64LittleEndian(hash));
    }
}
