using Companion.Session.Asks.Delays;
using Companion.Session.Audience;

namespace Companion.Session.Asks;

/// <summary>What the presenter has set about viewers while the show runs.</summary>
/// <param name="Limits">How far viewers may go, or null for what the settings say.</param>
/// <param name="Delay">How far they are behind, or null for what the settings say.</param>
/// <param name="Code">The code that the overlay shows to measure the delay, or null.</param>
/// <param name="ShowsEnded">How often the show was ended: each time viewers are forgotten.</param>
public sealed record AskRules(AskLimits? Limits, Delay? Delay, string? Code, int ShowsEnded)
{
    /// <summary>Who may open the audience's page, or null for what the settings say.</summary>
    public AudienceDoor? Door { get; init; }

    /// <summary>All as the settings say, no code shown.</summary>
    public static AskRules AsSet { get; } = new(null, null, null, ShowsEnded: 0);
}
