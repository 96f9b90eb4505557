using Companion.Engine.Proofs;

namespace Companion.Session.Events;

/// <summary>The easiest proof of an entry was found, or that the ladder had none.</summary>
/// <param name="At">When.</param>
/// <param name="Entry">The entry's number.</param>
/// <param name="Attribution">The whole proof, so that a log can be read when the rules have changed.</param>
public sealed record EntryAttributed(DateTimeOffset At, int Entry, Attribution Attribution) : Event(At);
