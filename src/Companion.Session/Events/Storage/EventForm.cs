using System.Text.Json.Nodes;

namespace Companion.Session.Events.Storage;

/// <summary>How one kind of event is written and read.</summary>
/// <param name="Kind">The stable name.</param>
/// <param name="Type">The type of the event.</param>
/// <param name="Write">Adds the fields of an event to a body.</param>
/// <param name="Read">Makes the event again from its time and its body.</param>
internal sealed record EventForm(
    string Kind, Type Type, Action<Event, JsonObject> Write, Func<DateTimeOffset, JsonObject, Event> Read)
{
    public static EventForm Of<T>(string kind, Action<T, JsonObject> write, Func<DateTimeOffset, JsonObject, T> read)
        where T : Event => new(kind, typeof(T), (happened, body) => write((T)happened, body), read);

    /// <summary>An event that has nothing but its time.</summary>
    public static EventForm Of<T>(string kind, Func<DateTimeOffset, T> read)
        where T : Event => new(kind, typeof(T), (_, _) => { }, (at, _) => read(at));
}
