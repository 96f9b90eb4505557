using System.Security.Cryptography;

namespace Companion.Server.Live.Asks;

/// <summary>Makes the codes that are shown to measure the delay: quick to read and to type, and not to be guessed.</summary>
internal static class DelayCodes
{
    // No vowels, so that no word comes about, and nothing that looks like another letter or a digit.
    private const string Letters = "bcdfghjkmnpqrstvwxz";

    /// <summary>A new code of four letters: one of 130,321.</summary>
    public static string Next() => RandomNumberGenerator.GetString(Letters, 4);
}
