using Companion.Session.Audience;

namespace Companion.Server.Settings;

/// <summary>The audience's page, as it is set before the show; the presenter changes the door while it runs.</summary>
internal sealed record AudienceSettings
{
    /// <summary>Who may open the page: <c>closed</c>, <c>byLink</c> as by default, or <c>open</c>.</summary>
    public AudienceDoor Door { get; init; } = AudienceDoor.ByLink;

    /// <summary>
    /// The address at which viewers reach the companion, such as <c>https://example.org</c>, where that is not this machine's own; as
    /// behind a proxy or a tunnel. Empty, as by default, for this machine's own.
    /// </summary>
    public string Address { get; init; } = "";

    /// <summary>The host of <see cref="Address"/>, which is answered to; null where there is none.</summary>
    public string? Host => Address.Length > 0 ? new Uri(Address).Host : null;

    /// <summary>How many viewers may be there at once, 1 to 100,000.</summary>
    public int MostViewers { get; init; } = 1000;

    /// <summary>
    /// How many may be there from one address at once, 1 to 100,000. Viewers behind one proxy, and those of some phone companies, share
    /// one.
    /// </summary>
    public int MostPerAddress { get; init; } = 100;

    /// <summary>How much all viewers of one address may ask together, in asks a minute, 1 to 100,000.</summary>
    public int AsksPerMinutePerAddress { get; init; } = 120;

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (!Enum.IsDefined(Door))
            yield return "audience.door is closed, byLink or open: change it.";
        if (Address.Length > 0 && !IsAddress(Address))
            yield return $"audience.address is an address such as https://example.org, without a path, and not '{Address}': change it.";
        (string Name, int Value)[] numbers =
        [
            ("mostViewers", MostViewers), ("mostPerAddress", MostPerAddress), ("asksPerMinutePerAddress", AsksPerMinutePerAddress),
        ];
        foreach (var (name, value) in numbers)
        {
            if (value is < 1 or > 100_000)
                yield return $"audience.{name} is 1 to 100000 and not {value}: change it.";
        }
    }

    private static bool IsAddress(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var address)
        && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps)
        && address.PathAndQuery == "/" && address.Fragment.Length == 0;
}
