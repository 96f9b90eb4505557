using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Companion.Session.Events.Storage;

/// <summary>
/// Events as text and back. The names of kinds and fields are written out in <see cref="EventForms"/> and are never changed: a
/// log of any age can be read.
/// </summary>
public static class EventText
{
    // A log is read by people and programs and is never put into a page: letters of all languages stay themselves.
    internal static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly Dictionary<Type, EventForm> ByType = EventForms.All.ToDictionary(form => form.Type);
    private static readonly Dictionary<string, EventForm> ByKind = EventForms.All.ToDictionary(form => form.Kind);

    /// <summary>An event as a log keeps it.</summary>
    public static StoredEvent Write(Event happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        var form = ByType[happened.GetType()];
        var body = new JsonObject { ["at"] = happened.At.ToString("O") };
        form.Write(happened, body);
        return new(form.Kind, body.ToJsonString(Plain));
    }

    /// <summary>Reads what <see cref="Write"/> wrote, in this version or in any before it.</summary>
    /// <exception cref="FormatException">The kind is unknown or the body is not of its kind; the message says which.</exception>
    public static Event Read(StoredEvent stored)
    {
        ArgumentNullException.ThrowIfNull(stored);
        if (!ByKind.TryGetValue(stored.Kind, out var form))
            throw new FormatException($"No kind of event is called '{stored.Kind}': the log was written by a later version.");
        try
        {
            var body = JsonNode.Parse(stored.Body)?.AsObject() ?? throw new FormatException("it is empty");
            return form.Read(body.Time("at"), body);
        }
        catch (Exception fault) when (fault is JsonException or FormatException or InvalidOperationException or ArgumentException)
        {
            throw new FormatException($"This is no event of the kind '{stored.Kind}': {fault.Message}", fault);
        }
    }
}
