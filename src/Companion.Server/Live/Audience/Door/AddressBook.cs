using System.Net;
using System.Net.Sockets;
using Companion.Server.Settings;

namespace Companion.Server.Live.Audience.Door;

/// <summary>
/// What is allowed to each address that viewers come from. Only those with somebody there, or lately, are remembered, in memory alone.
/// </summary>
/// <param name="settings">The limits.</param>
/// <param name="clock">The clock.</param>
/// <remarks>Not for several threads at once.</remarks>
internal sealed class AddressBook(AudienceSettings settings, TimeProvider clock)
{
    // Of addresses with nobody there. Who comes back after more have come and gone begins with all that is allowed.
    private const int MostIdle = 1000;

    private readonly Dictionary<string, AddressAccount> _accounts = [];

    /// <summary>What is allowed to an address.</summary>
    /// <param name="address">The address; null for none, as with a pipe.</param>
    public AddressAccount this[IPAddress? address]
    {
        get
        {
            var name = NameOf(address);
            if (!_accounts.TryGetValue(name, out var account))
            {
                ForgetIdle();
                _accounts[name] = account = New();
            }

            return account;
        }
    }

    private AddressAccount New() => new(
        // A page that was refused looks again; all pages of an address may be reloaded twice at once.
        Arrivals: new(perSecond: Math.Max(1, settings.MostPerAddress / 5.0), burst: 10 + 4 * settings.MostPerAddress, clock),
        Asks: new(settings.AsksPerMinutePerAddress / 60.0, burst: Math.Max(5, settings.AsksPerMinutePerAddress / 4.0), clock),
        Bytes: new(512 + 32.0 * settings.MostPerAddress, burst: 8192 + 512.0 * settings.MostPerAddress, clock));

    private void ForgetIdle()
    {
        var idle = _accounts.Where(account => account.Value.Present == 0).Select(account => account.Key).ToList();
        if (idle.Count < MostIdle)
            return;
        foreach (var name in idle)
            _accounts.Remove(name);
    }

    // Whoever has an IPv6 address mostly has the 2^64 beside it.
    private static string NameOf(IPAddress? address) => address switch
    {
        null => "",
        { IsIPv4MappedToIPv6: true } => address.MapToIPv4().ToString(),
        { AddressFamily: AddressFamily.InterNetworkV6 } when !IPAddress.IsLoopback(address) => Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8)),
        _ => address.ToString(),
    };
}
