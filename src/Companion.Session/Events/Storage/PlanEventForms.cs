using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Engine.Planning;

namespace Companion.Session.Events.Storage;

/// <summary>The kinds of event about what is planned. What stands here is never edited.</summary>
internal static class PlanEventForms
{
    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<RulesFeatured>(
            "rules-featured",
            (featured, body) => body["rules"] = new JsonArray([.. featured.Featured.Select(Write)]),
            (at, body) => new(at, new([.. body.Array("rules").Select(rule => Read(rule!.AsObject()))]))),
        EventForm.Of<StepNoted>(
            "step-noted",
            (noted, body) =>
            {
                body["places"] = noted.Places.ToString();
                body["removes"] = noted.Removes.ToString();
                body["text"] = noted.Text;
            },
            (at, body) => new(
                at, CandidateSet.Parse(body.Text("places")), CandidateSet.Parse(body.Text("removes")), body.Text("text"))),
        EventForm.Of<NotesRecalled>(
            "notes-recalled",
            (recalled, body) => body["notes"] = StepNotesText.ToJson(recalled.Notes),
            (at, body) => new(at, StepNotesText.FromJson(body.Array("notes")))),
    ];

    private static JsonNode Write(Feature feature) => new JsonObject
    {
        ["rule"] = feature.Rule.Value,
        ["early"] = feature.Timing == Timing.Early,
    };

    private static Feature Read(JsonObject body) => new(new(body.Text("rule")), body.Flag("early") ? Timing.Early : Timing.Late);
}
