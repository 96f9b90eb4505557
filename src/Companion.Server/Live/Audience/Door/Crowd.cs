using System.Net;
using Companion.Server.Settings;

namespace Companion.Server.Live.Audience.Door;

/// <summary>Counts who is there, and says whether there is room for one more.</summary>
/// <param name="settings">How many may be there.</param>
/// <param name="clock">The clock.</param>
internal sealed class Crowd(ServerSettings settings, TimeProvider clock)
{
    private readonly AudienceSettings _settings = settings.Audience;
    private readonly AddressBook _addresses = new(settings.Audience, clock);
    private readonly Lock _lock = new();
    private int _present;

    /// <summary>How many are there.</summary>
    public int Present => Volatile.Read(ref _present);

    /// <summary>Told when somebody comes or leaves. It does not wait.</summary>
    public Action Changed { get; set; } = () => { };

    /// <summary>Somebody knocks, or comes in to stay.</summary>
    /// <param name="address">Where from.</param>
    /// <param name="stays">Whether a place is taken.</param>
    /// <param name="hasKey">Whether they come with the audience's key.</param>
    /// <param name="place">The place, to be given back; null where none is taken.</param>
    /// <returns>Why there is no room for them, in one plain sentence, or null.</returns>
    public string? Enter(IPAddress? address, bool stays, bool hasKey, out Place? place)
    {
        var refusal = Admit(address, stays, hasKey, out place);
        if (place is not null)
            Changed();
        return refusal;
    }

    /// <summary>Somebody leaves.</summary>
    /// <param name="account">The account of their address.</param>
    public void Leave(AddressAccount account)
    {
        lock (_lock)
        {
            account.Present--;
            _present--;
        }

        Changed();
    }

    private string? Admit(IPAddress? address, bool stays, bool hasKey, out Place? place)
    {
        place = null;
        lock (_lock)
        {
            var account = _addresses[address];
            if (!account.Arrivals.Take(1) || account.Present >= _settings.MostPerAddress)
                return AudienceSentences.TooManyFromHere;
            if (_present >= _settings.MostViewers)
                return AudienceSentences.Full;
            if (!stays)
                return null;
            account.Present++;
            _present++;
            place = new(this, account, clock) { HasKey = hasKey };
            return null;
        }
    }
}
