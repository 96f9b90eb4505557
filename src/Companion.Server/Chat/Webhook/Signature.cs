using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Companion.Server.Chat.Webhook;

/// <summary>Proves that a body comes from one who knows the shared secret, and when: HMAC-SHA256 (RFC 2104) of the time, a point and the body.</summary>
internal static class Signature
{
    /// <summary>The header with the time, in seconds since 1970.</summary>
    public const string TimeHeader = "Companion-Timestamp";

    /// <summary>The header with the signature, in hexadecimal digits.</summary>
    public const string Header = "Companion-Signature";

    /// <summary>The signature of a body.</summary>
    /// <param name="secret">The shared secret.</param>
    /// <param name="time">The text of the time.</param>
    /// <param name="body">The body.</param>
    /// <returns>32 octets.</returns>
    public static byte[] Of(Secret secret, string time, ReadOnlySpan<byte> body)
    {
        byte[] signed = [.. Encoding.UTF8.GetBytes(time), (byte)'.', .. body];
        return HMACSHA256.HashData(secret.RevealBytes(), signed);
    }

    /// <summary>Whether a signature fits, in a time that does not depend on how far it does.</summary>
    /// <param name="hex">What was sent.</param>
    /// <param name="expected">What fits.</param>
    public static bool Fits(string hex, byte[] expected)
    {
        var sent = new byte[expected.Length];
        return hex.Length == 2 * expected.Length
            && Convert.FromHexString(hex, sent, out _, out _) == System.Buffers.OperationStatus.Done
            && CryptographicOperations.FixedTimeEquals(sent, expected);
    }

    /// <summary>A time as the header has it.</summary>
    /// <param name="time">The time.</param>
    public static string Text(DateTimeOffset time) => time.ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture);

    /// <summary>The time that a header names, or null.</summary>
    /// <param name="text">What was sent.</param>
    public static DateTimeOffset? Time(string text) =>
        text.Length <= 11 && long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds)
            ? DateTimeOffset.FromUnixTimeSeconds(seconds)
            : null;
}
