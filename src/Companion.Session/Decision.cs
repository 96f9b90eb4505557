using System.Collections.Immutable;
using Companion.Session.Events;

namespace Companion.Session;

/// <summary>What came of a command: events to store, or a refusal. Neither means that all is already as it was wanted.</summary>
public sealed class Decision
{
    private Decision(ImmutableArray<Event> events, string? refusal) => (Events, Refusal) = (events, refusal);

    /// <summary>Nothing to do.</summary>
    public static Decision Nothing { get; } = new([], null);

    /// <summary>What happened, in order; empty with a refusal.</summary>
    public ImmutableArray<Event> Events { get; }

    /// <summary>Why not, in one plain sentence with the way out, or null.</summary>
    public string? Refusal { get; }

    /// <summary>These events happened.</summary>
    public static Decision Of(params ReadOnlySpan<Event> events) => new([.. events], null);

    /// <summary>It was refused.</summary>
    /// <param name="reason">One plain sentence with the way out.</param>
    public static Decision Refuse(string reason) => new([], reason);
}
