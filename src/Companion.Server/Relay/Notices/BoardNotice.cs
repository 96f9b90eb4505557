using Companion.Session.Audience;

namespace Companion.Server.Relay.Notices;

/// <summary>What an audience server knows of the session: as much as it needs to let viewers in and to greet them.</summary>
/// <param name="Run">Names the run of the presenter's server, whose views are numbered anew with each.</param>
/// <param name="KeyHash">
/// SHA-256 of the audience's key, in hexadecimal digits: it recognises a viewer's link and opens nothing. The key is 256 random bits, of
/// which no hash tells anything.
/// </param>
/// <param name="Number">Grows by one with each view that is pushed to the viewers.</param>
/// <param name="IsRepeated">Whether this was told before: who hears of its number only now has missed the push.</param>
/// <param name="View">The newest view.</param>
internal sealed record BoardNotice(string Run, string KeyHash, long Number, bool IsRepeated, AudienceView View)
{
    /// <summary>Whether a push came between an older notice and this one that the viewers may have missed.</summary>
    /// <param name="before">The last notice that was heard before this one.</param>
    public bool HasGapAfter(BoardNotice before) =>
        Run != before.Run || Number > (IsRepeated ? before.Number : before.Number + 1);
}
