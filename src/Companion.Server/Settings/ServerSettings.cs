using System.Net;
using Companion.Engine.Proofs;
using Companion.Server.Chat;
using Companion.Session.Asks;

namespace Companion.Server.Settings;

/// <summary>
/// What can be set: in <c>configs/companion.json</c> beside the program, then in the presenter's own <c>companion.json</c> in the data
/// folder, then in the environment as <c>COMPANION_PORT</c> and so on, then on the command line. The last one counts.
/// </summary>
internal sealed record ServerSettings
{
    /// <summary>The port on this machine alone, 0 to 65535; 0 takes any that is free. 5170 by default.</summary>
    public int Port { get; init; } = 5170;

    /// <summary>
    /// Host names besides the loopback ones that are answered to: by which other machines reach this one, or as behind a proxy or
    /// tunnel. The first stands in the links for other machines. None by default.
    /// </summary>
    public IReadOnlyList<string> Hosts { get; init; } = [];

    /// <summary>
    /// The address of this machine at which others reach it, such as 192.168.0.7, or 0.0.0.0 for all that it has. Empty, as by
    /// default, for none. Others are answered by TLS alone.
    /// </summary>
    public string Listen { get; init; } = "";

    /// <summary>The certificate for other machines.</summary>
    public TlsSettings Tls { get; init; } = new();

    /// <summary>How fast the presenter speaks, in words a minute, 110 to 180; 150 by default.</summary>
    public int WordsPerMinute { get; init; } = SpeakingRate.Usual;

    /// <summary>The audience's page.</summary>
    public AudienceSettings Audience { get; init; } = new();

    /// <summary>Pushes a second to the audience, 1 to 10; 5 by default.</summary>
    public int AudiencePushesPerSecond { get; init; } = 5;

    /// <summary>Where audience servers follow this one; nowhere by default.</summary>
    public RelaySettings Relay { get; init; } = new();

    /// <summary>The chats; none by default.</summary>
    public ChatSettings Chat { get; init; } = new();

    /// <summary>How viewers are answered.</summary>
    public AskSettings Asks { get; init; } = new();

    /// <summary>How fast the presenter speaks.</summary>
    public SpeakingRate SpeakingRate => SpeakingRate.Of(WordsPerMinute);

    /// <summary>Whether other machines are listened to.</summary>
    public bool IsOpenToOthers => Listen.Length > 0;

    /// <summary>The name or address of this machine in the links for others.</summary>
    /// <exception cref="InvalidOperationException">Other machines are not listened to.</exception>
    public string HostForOthers => IsOpenToOthers
        ? Hosts.Count > 0 ? Hosts[0] : Listen
        : throw new InvalidOperationException("Other machines are not listened to.");

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (Port is < 0 or > 65535)
            yield return $"The port is a number from 0 to 65535 and not {Port}: change it.";
        foreach (var fault in FaultsForOthers())
            yield return fault;
        if (WordsPerMinute is < SpeakingRate.Slowest or > SpeakingRate.Fastest)
            yield return $"wordsPerMinute is {SpeakingRate.Slowest} to {SpeakingRate.Fastest} and not {WordsPerMinute}: change it.";
        if (AudiencePushesPerSecond is < 1 or > 10)
            yield return $"audiencePushesPerSecond is 1 to 10 and not {AudiencePushesPerSecond}: change it.";
        foreach (var fault in Audience.Faults())
            yield return fault;
        foreach (var fault in Relay.Faults())
            yield return fault;
        foreach (var fault in Chat.Faults())
            yield return fault;
        foreach (var fault in Asks.Faults())
            yield return fault;
    }

    // The keys and all that is written would be open to the whole network otherwise.
    private IEnumerable<string> FaultsForOthers()
    {
        if (Tls.Port is < 0 or > 65535)
            yield return $"The port of tls is a number from 0 to 65535 and not {Tls.Port}: change it.";
        if (!IsOpenToOthers)
        {
            if (Tls.Certificate.Length > 0)
                yield return "tls names a certificate, but nobody is listened to: name this machine's address as listen, or take tls out.";
            yield break;
        }

        if (!IPAddress.TryParse(Listen, out var address))
            yield return $"listen is an address of this machine such as 192.168.0.7, or 0.0.0.0 for all, and not '{Listen}': change it.";
        else if (Hosts.Count == 0 && (address.Equals(IPAddress.Any) || address.Equals(IPAddress.IPv6Any)))
            yield return $"With {Listen} the links for other machines need a name: add the name of this machine to hosts.";
        if (Tls.Certificate.Length == 0)
            yield return "Other machines are answered by TLS alone: name a certificate under tls, or take listen out.";
    }
}
