using System.Text.RegularExpressions;
using StackExchange.Redis;

namespace Companion.Server.Settings;

/// <summary>
/// The Redis server by which audience servers follow this one, for audiences that outgrow one machine. Its password stands elsewhere.
/// </summary>
internal sealed partial record RelaySettings
{
    /// <summary>
    /// Where it is, such as <c>127.0.0.1:6379</c> or <c>redis.example:6380,ssl=true,user=companion</c>. Empty, as by default, for none.
    /// </summary>
    public string Redis { get; init; } = "";

    /// <summary>What the names of all that is ours there begin with; several shows on one Redis server have one each.</summary>
    public string Prefix { get; init; } = "companion";

    /// <summary>Whether there is one.</summary>
    public bool IsOn => Redis.Length > 0;

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (!Plain().IsMatch(Prefix))
            yield return "relay.prefix is 1 to 40 small letters, digits or hyphens: change it.";
        if (!IsOn)
            yield break;
        if (Read() is not { EndPoints.Count: > 0 } options)
            yield return "relay.redis is an address such as 127.0.0.1:6379 or redis.example:6380,ssl=true: change it.";
        else if (options.Password is { Length: > 0 })
            yield return "The password of relay.redis does not stand among the settings: put it into COMPANION_REDIS_PASSWORD or the file redis-password.";
    }

    /// <summary>How to connect, without the password.</summary>
    /// <exception cref="InvalidOperationException">The address is none.</exception>
    public ConfigurationOptions Options() => Read() ?? throw new InvalidOperationException("relay.redis is no address.");

    // What is said when it cannot be read may repeat a password, and is not passed on.
    private ConfigurationOptions? Read()
    {
        try
        {
            return ConfigurationOptions.Parse(Redis);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    [GeneratedRegex("^[a-z0-9-]{1,40}$")]
    private static partial Regex Plain();
}
