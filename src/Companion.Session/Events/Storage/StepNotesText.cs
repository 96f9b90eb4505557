using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Session.Events.Storage;

/// <summary>The notes of a puzzle as they are stored: a JSON array of objects with <c>places</c>, <c>removes</c> and <c>text</c>.</summary>
public static class StepNotesText
{
    /// <summary>Writes notes.</summary>
    /// <param name="notes">The notes in order.</param>
    public static string Write(ValueArray<StepNote> notes) => ToJson(notes).ToJsonString(EventText.Plain);

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="FormatException">It is something else.</exception>
    public static ValueArray<StepNote> Read(string text)
    {
        try
        {
            return FromJson(JsonNode.Parse(text)?.AsArray() ?? throw new FormatException("They are empty."));
        }
        catch (Exception fault) when (fault is JsonException or FormatException or InvalidOperationException or ArgumentException)
        {
            throw new FormatException($"These are no notes: {fault.Message}", fault);
        }
    }

    internal static JsonArray ToJson(ValueArray<StepNote> notes) => new([.. notes.Select(note => (JsonNode)new JsonObject
    {
        ["places"] = note.Places.ToString(),
        ["removes"] = note.Removes.ToString(),
        ["text"] = note.Text,
    })]);

    internal static ValueArray<StepNote> FromJson(JsonArray notes) => new([.. notes.Select(note => note?.AsObject() ?? throw new FormatException("a note is empty")).Select(note =>
        new StepNote(CandidateSet.Parse(note.Text("places")), CandidateSet.Parse(note.Text("removes")), note.Text("text")))]);
}
