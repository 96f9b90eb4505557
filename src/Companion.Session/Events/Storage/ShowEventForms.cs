using System.Collections.Immutable;

namespace Companion.Session.Events.Storage;

/// <summary>The kinds of event about shows and their recordings.</summary>
internal static class ShowEventForms
{
    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<ShowBegun>(
            "show-begun",
            (begun, body) =>
            {
                body["title"] = begun.Title;
                body["entries"] = begun.Entries;
                body["loadings"] = begun.Loadings;
            },
            (at, body) => new(at, body.Text("title"), Counted(body.Count("entries")), Counted(body.Count("loadings")))),
        EventForm.Of<RecordingStarted>("recording-started", at => new(at)),
        EventForm.Of<RecordingPaused>("recording-paused", at => new(at)),
        EventForm.Of<RecordingResumed>("recording-resumed", at => new(at)),
        EventForm.Of<RecordingStopped>("recording-stopped", at => new(at)),
    ];

    // Half of what there is room for leaves enough for what is counted on.
    private static int Counted(int count) => count is >= 0 and <= int.MaxValue / 2
        ? count
        : throw new FormatException($"{count} is no count of what came before");
}
