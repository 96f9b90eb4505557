using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Events.Storage;

/// <summary>Every kind of event with its stable name and fields. New kinds are added; what stands here is never edited.</summary>
internal static class EventForms
{
    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<PuzzleLoaded>(
            "puzzle-loaded",
            (loaded, body) =>
            {
                body["grid"] = loaded.Grid;
                body["title"] = loaded.Title;
                body["setter"] = loaded.Setter;
                body["link"] = loaded.Link;
            },
            (at, body) => new(at, body.Text("grid"), body.Text("title"), body.Text("setter"), body.Text("link"))),
        EventForm.Of<DigitPlaced>(
            "digit-placed",
            (placed, body) =>
            {
                body["cell"] = placed.Cell.ToString();
                body["digit"] = placed.Digit.Value;
            },
            (at, body) => new(at, Cell.Parse(body.Text("cell")), body.Digit("digit"))),
        EventForm.Of<CellsErased>(
            "cells-erased",
            (erased, body) => body["cells"] = JsonFields.Names(erased.Cells),
            (at, body) => new(at, body.Cells("cells"))),
        EventForm.Of<BlockMarkChanged>(
            "block-mark-changed",
            (mark, body) => WriteMark(body, mark.Cells, mark.Digit, mark.IsSet),
            (at, body) => new(at, body.Cells("cells"), body.Digit("digit"), body.Flag("set"))),
        EventForm.Of<CellMarkChanged>(
            "cell-mark-changed",
            (mark, body) => WriteMark(body, mark.Cells, mark.Digit, mark.IsSet),
            (at, body) => new(at, body.Cells("cells"), body.Digit("digit"), body.Flag("set"))),
        EventForm.Of<StrikeChanged>(
            "strike-changed",
            (strike, body) => WriteMark(body, strike.Cells, strike.Digit, strike.IsStruck),
            (at, body) => new(at, body.Cells("cells"), body.Digit("digit"), body.Flag("set"))),
        EventForm.Of<MarksSettled>("marks-settled", at => new(at)),
        EventForm.Of<GridCleared>("grid-cleared", at => new(at)),
        EventForm.Of<EntryUndone>("entry-undone", at => new(at)),
        EventForm.Of<EntryRedone>("entry-redone", at => new(at)),
        EventForm.Of<StoodBy>(
            "stood-by",
            (by, body) => body["deduction"] = DeductionJson.Write(by.Deduction),
            (at, body) => new(at, DeductionJson.Read(body.Object("deduction")))),
        EventForm.Of<StoodDown>("stood-down", at => new(at)),
        EventForm.Of<PutOnAir>(
            "put-on-air",
            (put, body) =>
            {
                body["deduction"] = DeductionJson.Write(put.Deduction);
                body["grade"] = (int)put.Grade;
            },
            (at, body) => new(at, DeductionJson.Read(body.Object("deduction")), body.Grade("grade"))),
        EventForm.Of<AirCleared>("air-cleared", at => new(at)),
        EventForm.Of<DeductionUsed>(
            "deduction-used",
            (used, body) => body["deduction"] = DeductionJson.Write(used.Deduction),
            (at, body) => new(at, DeductionJson.Read(body.Object("deduction")))),
        EventForm.Of<CoHostOnAirAllowed>(
            "co-host-on-air-allowed",
            (allowed, body) => body["allowed"] = allowed.Allowed,
            (at, body) => new(at, body.Flag("allowed"))),
        EventForm.Of<FramePlaced>(
            "frame-placed",
            (placed, body) =>
            {
                body["scene"] = placed.Scene;
                body["left"] = placed.Frame.Left;
                body["top"] = placed.Frame.Top;
                body["width"] = placed.Frame.Width;
                body["height"] = placed.Frame.Height;
            },
            (at, body) => new(
                at,
                body.Text("scene"),
                new Frame(body.Number("left"), body.Number("top"), body.Number("width"), body.Number("height")))),
        EventForm.Of<SceneForgotten>(
            "scene-forgotten",
            (forgotten, body) => body["scene"] = forgotten.Scene,
            (at, body) => new(at, body.Text("scene"))),
        EventForm.Of<FrameShown>(
            "frame-shown",
            (shown, body) => body["scene"] = shown.Scene,
            (at, body) => new(at, body.TextOrNull("scene"))),
        EventForm.Of<EntryAttributed>(
            "entry-attributed",
            (attributed, body) =>
            {
                body["entry"] = attributed.Entry;
                AttributionJson.Write(attributed.Attribution, body);
            },
            (at, body) => new(at, (int)body.Number("entry"), AttributionJson.Read(body))),
        .. AskEventForms.All,
        .. CallEventForms.All,
        .. CueEventForms.All,
        .. LadderEventForms.All,
        .. PlanEventForms.All,
        .. ShowEventForms.All,
    ];

    private static void WriteMark(JsonObject body, CellSet cells, Digit digit, bool isSet)
    {
        body["cells"] = JsonFields.Names(cells);
        body["digit"] = digit.Value;
        body["set"] = isSet;
    }
}
