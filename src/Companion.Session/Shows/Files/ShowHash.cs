using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Companion.Session.Events.Storage;

namespace Companion.Session.Shows.Files;

/// <summary>
/// The hash of a show: SHA-256 (FIPS 180-4), in hexadecimal digits, over its events as lines of UTF-8, each the kind, a blank, the body
/// and a line feed.
/// </summary>
public static class ShowHash
{
    /// <summary>The hash.</summary>
    /// <param name="events">The events in order, as the log keeps them.</param>
    public static string Of(IEnumerable<StoredEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var stored in events)
            hash.AppendData(Encoding.UTF8.GetBytes($"{stored.Kind} {stored.Body}\n"));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>A body as the log keeps it, however it was laid out.</summary>
    /// <param name="body">The JSON of the body.</param>
    internal static string Plain(JsonNode body) => body.ToJsonString(EventText.Plain);
}
