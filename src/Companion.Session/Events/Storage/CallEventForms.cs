using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Events.Storage;

/// <summary>The events about what viewers call. They hold cells and coarse numbers, and nothing of a viewer.</summary>
internal static class CallEventForms
{
    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<CallsStoodBy>("calls-stood-by", (by, body) => body["cells"] = Write(by.Cells), (at, body) => new(at, Read(body))),
        EventForm.Of<CellsFoundFirst>("cells-found-first", (found, body) => body["cells"] = Write(found.Cells), (at, body) => new(at, Read(body))),
        EventForm.Of<CallsPutOnAir>("calls-put-on-air", (put, body) => body["cells"] = Write(put.Cells), (at, body) => new(at, Read(body))),
    ];

    // As in r1c3:1 r4c7:25.
    private static string Write(ValueArray<CalledCell> cells) =>
        string.Join(' ', cells.Select(called => string.Create(CultureInfo.InvariantCulture, $"{called.Cell}:{called.AtLeast}")));

    private static ValueArray<CalledCell> Read(JsonObject body) => new([.. body.Text("cells").Split(' ').Select(text => text.Split(':') switch
    {
        [var cell, var atLeast] => new CalledCell(Cell.Parse(cell), int.Parse(atLeast, CultureInfo.InvariantCulture)),
        _ => throw new FormatException($"'{text}' is no called cell."),
    })]);
}
