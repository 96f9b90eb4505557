using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Session.Events.Storage;

/// <summary>The kinds of event about the ladder.</summary>
internal static class LadderEventForms
{
    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<LadderStopped>(
            "ladder-stopped",
            (stopped, body) => body["rule"] = stopped.Last?.Value,
            (at, body) => new(at, body.TextOrNull("rule") is { } rule ? new RuleId(rule) : null)),
        EventForm.Of<FamilySwitched>(
            "family-switched",
            (switched, body) =>
            {
                body["family"] = switched.Family;
                body["on"] = switched.IsOn;
            },
            (at, body) => new(at, body.Text("family"), body.Flag("on"))),
    ];
}
