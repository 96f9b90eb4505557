using Companion.Session.Planning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>
/// Tells that a featured rule has come open, is at most two easier steps away, or was to be expected and is not found ahead any more: the rule alone, no
/// cell and no digit. It is said in the same words for as long as it is so.
/// </summary>
internal static class FeaturedAhead
{
    public static IEnumerable<WatchNote> Notes(SessionState state, Outlook? outlook, Voice voice)
    {
        var waiting = WayAhead.Waiting(state).Select(feature => feature.Rule).ToHashSet();
        foreach (var prospect in outlook?.Prospects.Where(prospect => waiting.Contains(prospect.Rule)) ?? [])
        {
            var name = voice.Wording.NameOf(prospect.Rule);
            if (prospect.Coming == Coming.Open)
                yield return Note(WatchKind.FeaturedOpen, $"The featured {name} has come open: show it before it is passed.", prospect);
            else if (prospect.Coming == Coming.Near)
                yield return Note(WatchKind.FeaturedNear, $"The featured {name} is at most two easier steps away: have your words ready.", prospect);
            else if (prospect.IsPassed)
                yield return Note(WatchKind.FeaturedPassed, $"The featured {name} was to be expected and was not found on the way that was tried from here: undo if it is to be shown.", prospect);
        }

        WatchNote Note(WatchKind kind, string text, Prospect prospect) => new(
            kind,
            text,
            [],
            state.History.Made.FirstOrDefault(step => step.Number == prospect.Since && step.Grid.Loading == state.Grid.Loading)?.Entry.At,
            state.History.Made.Count(step => step.Number > prospect.Since));
    }
}
