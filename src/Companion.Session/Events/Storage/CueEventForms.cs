using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Companion.Session.State;

namespace Companion.Session.Events.Storage;

/// <summary>The kinds of event of the cue list, with their stable names and fields. What stands here is never edited.</summary>
internal static class CueEventForms
{
    // Both ways of the names of stages. What stands here is never edited, whatever the stages are called in the code.
    private static readonly ImmutableDictionary<CueStage, string> StageNames = new Dictionary<CueStage, string>
    {
        [CueStage.Listed] = "listed",
        [CueStage.StandBy] = "stand-by",
        [CueStage.Go] = "go",
        [CueStage.Done] = "done",
    }.ToImmutableDictionary();

    private static readonly ImmutableDictionary<string, CueStage> Stages =
        StageNames.ToImmutableDictionary(pair => pair.Value, pair => pair.Key);

    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<DeductionCued>(
            "deduction-cued",
            (cued, body) =>
            {
                body["id"] = cued.Id;
                body["deduction"] = DeductionJson.Write(cued.Deduction);
                body["grade"] = (int)cued.Grade;
            },
            (at, body) => new(at, body.Count("id"), DeductionJson.Read(body.Object("deduction")), body.Grade("grade"))),
        EventForm.Of<TextCued>(
            "text-cued",
            (cued, body) =>
            {
                body["id"] = cued.Id;
                body["text"] = cued.Text;
            },
            (at, body) => new(at, body.Count("id"), body.Text("text"))),
        EventForm.Of<CueReworded>(
            "cue-reworded",
            (reworded, body) =>
            {
                body["id"] = reworded.Id;
                body["text"] = reworded.Text;
            },
            (at, body) => new(at, body.Count("id"), body.Text("text"))),
        EventForm.Of<CueRegraded>(
            "cue-regraded",
            (regraded, body) =>
            {
                body["id"] = regraded.Id;
                body["grade"] = (int)regraded.Grade;
            },
            (at, body) => new(at, body.Count("id"), body.Grade("grade"))),
        EventForm.Of<CueMoved>(
            "cue-moved",
            (moved, body) =>
            {
                body["id"] = moved.Id;
                body["after"] = moved.After;
            },
            (at, body) => new(at, body.Count("id"), body["after"]?.GetValue<int>())),
        EventForm.Of<CueTurned>(
            "cue-turned",
            (turned, body) =>
            {
                body["id"] = turned.Id;
                body["stage"] = StageNames[turned.Stage];
            },
            (at, body) => new(at, body.Count("id"), Stage(body.Text("stage")))),
        EventForm.Of<CuesRemoved>(
            "cues-removed",
            (removed, body) => body["ids"] = new JsonArray([.. removed.Ids.Select(id => JsonValue.Create(id))]),
            (at, body) => new(at, new([.. body.Array("ids").Select(id => id!.GetValue<int>())]))),
    ];

    private static CueStage Stage(string name) =>
        Stages.TryGetValue(name, out var stage) ? stage : throw new FormatException($"'{name}' is no stage of a cue.");
}
