using Companion.Engine.Proofs;

namespace Companion.Server.Settings;

/// <summary>
/// What can be set: in <c>configs/companion.json</c> beside the program, then in the presenter's own <c>companion.json</c> in the data
/// folder, then in the environment as <c>COMPANION_PORT</c> and so on, then on the command line. The last one counts.
/// </summary>
internal sealed record ServerSettings
{
    /// <summary>The port, 0 to 65535; 0 takes any that is free. 5170 by default.</summary>
    public int Port { get; init; } = 5170;

    /// <summary>Host names besides the loopback ones that are answered to, as behind a proxy or tunnel. None by default.</summary>
    public IReadOnlyList<string> Hosts { get; init; } = [];

    /// <summary>How fast the presenter speaks, in words a minute, 110 to 180; 150 by default.</summary>
    public int WordsPerMinute { get; init; } = SpeakingRate.Usual;

    /// <summary>Pushes a second to the audience, 1 to 10; 5 by default.</summary>
    public int AudiencePushesPerSecond { get; init; } = 5;

    /// <summary>How fast the presenter speaks.</summary>
    public SpeakingRate SpeakingRate => SpeakingRate.Of(WordsPerMinute);

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (Port is < 0 or > 65535)
            yield return $"The port is a number from 0 to 65535 and not {Port}: change it.";
        if (WordsPerMinute is < SpeakingRate.Slowest or > SpeakingRate.Fastest)
            yield return $"wordsPerMinute is {SpeakingRate.Slowest} to {SpeakingRate.Fastest} and not {WordsPerMinute}: change it.";
        if (AudiencePushesPerSecond is < 1 or > 10)
            yield return $"audiencePushesPerSecond is 1 to 10 and not {AudiencePushesPerSecond}: change it.";
    }
}
